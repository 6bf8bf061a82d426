import type { Hookup, Station, SurveyReport } from '../../core/index.ts';

/** What was asked for, apart from the command and the file. */
export interface Options {
  readonly form: 'text' | 'json' | 'csv' | 'spice';
  /** Only this hook-up; all where none was named. */
  readonly hookup: Hookup | null;
  readonly control: string | null;
  readonly moment: 'receive' | 'sending';
  /** The file to write, where a command writes one. */
  readonly out: string | null;
  readonly paper?: string;
  /** Without cables that are made or tested. */
  readonly todo: boolean;
}

export interface Given {
  readonly station: Station;
  readonly report: SurveyReport;
  readonly options: Options;
}

/** What is printed, and the exit status. */
export interface Answer {
  readonly text: string;
  readonly status: 0 | 1;
}

/** A reason to stop, to be read by the user; exit status 2. */
export class Refusal extends Error {}

/** A command of the line: what it prints and the exit status that follows from it. */
export interface Command {
  readonly summary: string;
  /** Forms beside readable text. */
  readonly forms: readonly Options['form'][];
  run(given: Given): Answer | Promise<Answer>;
}

/** A command about the program itself: it needs no file. */
export interface Listing {
  readonly summary: string;
  readonly forms: readonly Options['form'][];
  list(form: Options['form']): string;
}

/** Whether a row of a hook-up was asked for. */
export const isAsked = (options: Options, hookup: string): boolean =>
  options.hookup === null || options.hookup.id === hookup;

export const asJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
