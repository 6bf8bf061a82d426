import type { Hookup, Station, SurveyReport } from '../../core/index.ts';
import type { OptionName } from './option-table.ts';

/** Forms of an answer beside readable text; each is asked for by its option. */
export type Form = 'json' | 'csv' | 'spice';

/** What was asked for, apart from the command and the file. */
export interface Options {
  readonly form: 'text' | Form;
  /** Only this hook-up; all where none was named. */
  readonly hookup: Hookup | null;
  /** Only controls with one of these ids; all where none was named. */
  readonly control: readonly string[] | null;
  readonly moment: 'receive' | 'sending';
  /** The file to write, where a command writes one. */
  readonly out: string | null;
  /** The folder for several files, where a command writes some. */
  readonly write: string | null;
  readonly paper?: string;
  /** Without cables that are made or tested. */
  readonly todo: boolean;
}

/** Says how far long work is: what is being done and, where it can be counted, how much of how much is done. */
export type Progress = (doing: string, done?: number, of?: number) => void;

/** What is being done before there is anything to count. */
export const surveying = 'surveying the station';

export interface Given {
  readonly station: Station;
  /** Made when it is looked at: not every command needs one. */
  readonly report: SurveyReport;
  readonly options: Options;
  readonly progress?: Progress;
}

/** What is printed, and the exit status. */
export interface Answer {
  readonly text: string;
  readonly status: 0 | 1;
}

/** A command of the line: what it prints and the exit status that follows from it. */
export interface Command {
  readonly summary: string;
  readonly forms: readonly Form[];
  /** The other options that mean something to it. */
  readonly options: readonly OptionName[];
  run(given: Given): Answer | Promise<Answer>;
}

/** A command about the program itself: it needs no file. */
export interface Listing {
  readonly summary: string;
  readonly forms: readonly Form[];
  list(form: Options['form']): string;
}

/** Whether a row of a hook-up was asked for. */
export const isAsked = ({ hookup }: Options, id: string): boolean => hookup === null || hookup.id === id;

/** Whether a row of the press of a control was asked for. */
export const isPressed = (options: Options, row: { hookup: string; control: string }): boolean =>
  isAsked(options, row.hookup) && (options.control?.includes(row.control) ?? true);

export const asJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
