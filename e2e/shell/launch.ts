import type { Page } from '@playwright/test';

type Electron = typeof import('electron');

/** The desktop app, running: on Electron itself or on the stand-in. */
export interface Shell {
  /** The first window's page. */
  readonly page: Page;
  /** Pages of all windows, in the order in which they were opened. */
  pages(): Page[];
  /** Runs a function in the main process, with the electron module as it is there. */
  evaluate<Result, Argument>(
    inMain: (electron: Electron, argument: Argument) => Result | Promise<Result>,
    argument: Argument,
  ): Promise<Result>;
  /** Resolves with the main process's exit status when it has ended, and its windows with it. */
  readonly ended: Promise<number | null>;
  /** Ends the main process without asking its windows, if it still runs. */
  stop(): Promise<void>;
  /** Ends it at once, as a power cut would: nothing in it can do anything more. */
  kill(): Promise<void>;
}

export interface Launch {
  /** The folder with the app's package.json. */
  readonly app: string;
  /** The folder for the user's data; the same one again is a second start of the same installation. */
  readonly home: string;
  /** What the command line brings, after the program. */
  readonly args?: readonly string[];
}
