import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { test as base, expect, type Page } from '@playwright/test';
import type { FileStamp, NotDone, OpenedFile, ShellCommand } from '../../renderer/shell/bridge.ts';
import { makeBareApp } from './bare-app.ts';
import type { Shell } from './launch.ts';
import { electronMissing, launchElectron } from './launch-electron.ts';
import { launchStandIn } from './launch-stand-in.ts';
import { type ShellBrowser, startShellBrowser } from './shell-browser.ts';

export { expect };

type Heard = ['command', ShellCommand] | ['opened', OpenedFile] | ['problem', NotDone] | ['saveToClose', null];
declare global {
  interface Window {
    heard: Heard[];
  }
}

interface Fixtures {
  /** A folder of the test's own. */
  folder: string;
  /** The user's data folder: whatever the test starts is the same installation. */
  home: string;
  /** Starts the shell around the bare page, with these arguments on its command line. */
  start(...args: string[]): Promise<Shell>;
  /** Starts the app as it is built. */
  startApp(...args: string[]): Promise<Shell>;
}

export type Kind = 'the stand-in' | 'Electron';

interface Inner {
  kind: Kind;
  launch(app: string, args: string[]): Promise<Shell>;
}

interface WorkerFixtures {
  /** The browser of all stand-ins that the worker starts; another one should it have ended. */
  shellBrowser(): Promise<ShellBrowser>;
}

export const test = base.extend<Fixtures & Inner, WorkerFixtures>({
  kind: ['the stand-in', { option: true }],
  shellBrowser: [
    async ({}, use) => {
      let running: ShellBrowser | undefined;
      await use(async () => {
        if (!running) {
          running = await startShellBrowser();
          running.context.once('close', () => (running = undefined));
        }
        return running;
      });
      await running?.close();
    },
    { scope: 'worker' },
  ],
  folder: async ({}, use) => {
    const folder = mkdtempSync(path.join(tmpdir(), 'stationwright-e2e-'));
    await use(folder);
    rmSync(folder, { recursive: true, force: true });
  },
  home: async ({}, use) => {
    const home = mkdtempSync(path.join(tmpdir(), 'stationwright-home-'));
    await use(home);
    rmSync(home, { recursive: true, force: true });
  },
  launch: async ({ kind, home, shellBrowser }, use) => {
    const running: Shell[] = [];
    await use(async (app, args) => {
      const given = { app, home, args };
      const shell = await (kind === 'Electron' ? launchElectron(given) : launchStandIn(given, await shellBrowser()));
      running.push(shell);
      return shell;
    });
    for (const shell of running) await shell.stop();
  },
  start: async ({ launch, folder }, use) => {
    const app = makeBareApp(path.join(folder, 'app'));
    await use(async (...args) => {
      const shell = await launch(app, args);
      await expectReady(shell.page);
      return shell;
    });
  },
  startApp: async ({ launch }, use) => {
    await use((...args) => launch(path.join(import.meta.dirname, '../..'), args));
  },
});

/** Runs the tests on the stand-in and, where its program is here, on Electron. */
export function onEachShell(tests: () => void): void {
  for (const kind of ['the stand-in', 'Electron'] as const)
    test.describe(`on ${kind}`, () => {
      test.use({ kind });
      test.skip(kind === 'Electron' && electronMissing !== null, electronMissing ?? '');
      tests();
    });
}

/** The file's stamp, as the bridge hands it over. */
export function stampOf(file: string): FileStamp {
  const { mtimeMs, size, ino } = statSync(file);
  return { modifiedMs: mtimeMs, size, inode: ino };
}

const expectReady = (page: Page) => expect(page.locator('body')).toHaveAttribute('data-ready', 'yes');

/** The window that was opened next, around the bare page like the first. */
export async function secondWindow(shell: Shell): Promise<Page> {
  await expect.poll(() => shell.pages().length).toBe(2);
  const page = shell.pages()[1] as Page;
  await expectReady(page);
  return page;
}

export const heardBy = (page: Page): Promise<Heard[]> => page.evaluate(() => window.heard);

/** Answers every dialog of that kind from now on. */
export function answerOpen(shell: Shell, file: string | null): Promise<void> {
  return shell.evaluate(({ dialog }, path) => {
    dialog.showOpenDialog = async () => ({ canceled: path === null, filePaths: path === null ? [] : [path] });
  }, file);
}

export function answerSave(shell: Shell, file: string | null): Promise<void> {
  return shell.evaluate(({ dialog }, path) => {
    dialog.showSaveDialog = async () => ({ canceled: path === null, filePath: path ?? '' });
  }, file);
}

export function answerQuestion(shell: Shell, button: string): Promise<void> {
  return shell.evaluate(({ dialog }, wanted) => {
    dialog.showMessageBox = async (...given: unknown[]) => {
      const { buttons } = given.at(-1) as { buttons: string[] };
      if (!buttons.includes(wanted)) throw new Error(`no button '${wanted}' among ${buttons}`);
      return { response: buttons.indexOf(wanted), checkboxChecked: false };
    };
  }, button);
}

/** Answers each question with the first of these buttons that it has, and keeps what was asked. */
export function answerQuestions(shell: Shell, ...buttons: string[]): Promise<void> {
  return shell.evaluate(({ dialog }, wanted) => {
    const kept = globalThis as unknown as { asked: string[] };
    kept.asked = [];
    dialog.showMessageBox = async (...given: unknown[]) => {
      const { buttons: offered, message } = given.at(-1) as { buttons: string[]; message: string };
      kept.asked.push(message);
      const button = wanted.find((one) => offered.includes(one));
      if (!button) throw new Error(`none of ${wanted} among ${offered}`);
      return { response: offered.indexOf(button), checkboxChecked: false };
    };
  }, buttons);
}

export const askedIn = (shell: Shell): Promise<string[]> =>
  shell.evaluate(() => (globalThis as unknown as { asked: string[] }).asked, null);

interface WithHeld {
  held: Map<unknown, () => void>;
}

/**
 * From here on, what the shell wants to do after just that time is held until `pass` says that the time has passed:
 * nothing has to wait for it, and what comes before its time is seen. `held` counts what is waited for.
 */
export async function holdTimers(shell: Shell, waitMs: number) {
  await shell.evaluate((_electron, wantedMs) => {
    const held = new Map<unknown, () => void>();
    const { setTimeout: set, clearTimeout: clear } = globalThis;
    const hold = (act: () => void, ms?: number, ...rest: unknown[]) => {
      if (ms !== wantedMs) return set(act, ms, ...rest);
      const timer = {};
      held.set(timer, act);
      return timer;
    };
    const drop = (timer?: number) => {
      if (!held.delete(timer)) clear(timer);
    };
    Object.assign(globalThis, { held, setTimeout: hold, clearTimeout: drop });
  }, waitMs);
  return {
    held: () => shell.evaluate(() => (globalThis as unknown as WithHeld).held.size, null),
    pass: () =>
      shell.evaluate(() => {
        const { held } = globalThis as unknown as WithHeld;
        const due = [...held.values()];
        held.clear();
        for (const act of due) act();
      }, null),
  };
}

export function chooseMenu(shell: Shell, id: string): Promise<void> {
  return shell.evaluate(({ Menu }, wanted) => {
    const item = Menu.getApplicationMenu()?.getMenuItemById(wanted);
    if (!item) throw new Error(`the menu has no '${wanted}'`);
    item.click();
  }, id);
}

export function windowTitles(shell: Shell): Promise<string[]> {
  return shell.evaluate(({ BrowserWindow }) => BrowserWindow.getAllWindows().map((window) => window.getTitle()), null);
}
