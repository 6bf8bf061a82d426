import type { History, Station, Trouble } from '../../core/index.ts';

/** Why a computation came to nothing: a sentence for the user, and the rest for a report. */
export interface ComputingFailure extends Omit<Trouble, 'where'> {
  readonly words: string;
  readonly station: Station;
}

/** What was computed, of which document, and when it came, in milliseconds of the clock. */
export interface Good<T> {
  readonly value: T;
  readonly of: Station;
  readonly at: number;
}

/** Something from before. Without a failure the newer one is still under way, and takes its time. */
export interface Old<T> extends Good<T> {
  readonly is: 'old';
  /** The step since which nothing was computed, to follow “since”. */
  readonly since: string;
  readonly failure: ComputingFailure | null;
}

/**
 * Something computed from the document. Its age comes first: nobody gets at a value without asking for it, so that what
 * was not computed can't pass for nothing. `passing` is the last value while the next is about to come.
 */
export type Computed<T> =
  | { readonly is: 'computing' }
  | { readonly is: 'missing'; readonly failure: ComputingFailure }
  | (Good<T> & { readonly is: 'fresh' | 'passing' })
  | Old<T>;

/** The last value there was, however old: for what is marked as old where it is shown. */
export const ofAnyAge = <T>(computed: Computed<T>): T | null => ('value' in computed ? computed.value : null);

/** Why the newest document has no value of its own, where it failed. */
export const failureIn = <T>(computed: Computed<T>): ComputingFailure | null =>
  'failure' in computed ? computed.failure : null;

export const isUnderWay = <T>(computed: Computed<T>): boolean =>
  computed.is !== 'fresh' && failureIn(computed) === null;

interface Known<T> {
  /** What came of the document as it is; nothing while it is being computed. */
  readonly own: Good<T> | { readonly failure: ComputingFailure } | undefined;
  /** The last value there was of it as it was before. */
  readonly last: Good<T> | undefined;
  /** Whether what is under way has taken longer than one waits without a word. */
  readonly slow: boolean;
  readonly before: Computed<T>;
  readonly history: History;
  /** Whether what came of one document holds for another. */
  readonly isSame: (a: Station, b: Station) => boolean;
}

/**
 * How what is known of a document is shown. What is marked as old or missing stays so until a value is there, so that
 * its words don't flicker from edit to edit.
 */
export function ageOf<T>({ own, last, slow, before, history, isSame }: Known<T>): Computed<T> {
  if (own && 'value' in own) return { is: 'fresh', ...own };
  const failure = own?.failure ?? (slow ? null : failureIn(before));
  if (!last) return failure ? { is: 'missing', failure } : { is: 'computing' };
  if (!failure && !slow && before.is !== 'old') return { is: 'passing', ...last };
  return { is: 'old', ...last, since: sinceWords(history, (s) => isSame(s, last.of)) ?? timeOf(last.at), failure };
}

/** `“Lay D4”`, `“Lay D4” was undone`: the step that led away from a document; null where it is not in the history. */
function sinceWords({ past, future }: History, isIt: (station: Station) => boolean): string | null {
  const made = past.findLast((step) => isIt(step.before));
  if (made) return `“${made.name}”`;
  const undone = future.find((step) => isIt(step.after));
  return undone ? `“${undone.name}” was undone` : null;
}

/** `14:32`, by the user's clock. */
export const timeOf = (at: number): string => new Date(at).toTimeString().slice(0, 5);
