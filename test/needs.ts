import type { TestOptions } from 'vitest';

declare module 'vitest' {
  interface TaskMeta {
    /** Why a test was skipped. */
    skipped?: string;
  }
}

/** Options of a test that not every machine can do: where it can't, the reports say in its `meta` what was missing. */
export const needs = (what: string, isThere: boolean): TestOptions =>
  isThere ? {} : { skip: true, meta: { skipped: `needs ${what}` } };

/** The same for what only some systems have. */
export const needsUnix = needs('a system like Unix', process.platform !== 'win32');
export const needsLinux = needs('Linux', process.platform === 'linux');
