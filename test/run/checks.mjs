import path from 'node:path';
import { root } from '../../electron/start/set-up.mjs';
import { runCommand } from './command.mjs';
import { toldBy } from './tell.mjs';

/**
 * @typedef {{ name: string, script: string, args?: string[] }} Check one script of package.json; with `args` it runs tests
 * @typedef {{ passed: number, failed: number, skips: import('./tell.mjs').Skip[] }} Count
 * @typedef {Count & { name: string, seconds: number, output: string }} Outcome
 */

const reporter = path.join(root, 'test/run/tell.mjs');

/** @type {Check} */
const format = { name: 'format', script: 'check:format' };
/** @type {Check} */
const lint = { name: 'lint', script: 'check:lint' };
/** @type {Check} */
const types = { name: 'types', script: 'check:types' };

/** @param {string} name @param {string[]} [files] @returns {Check} */
const unitTests = (name, files = []) => ({
  name,
  script: 'test:unit',
  args: ['--reporter=default', `--reporter=${reporter}`, ...files],
});

/** Any order, several at a time. @type {Check[]} */
export const smallChecks = [
  // Some unit tests print with the built screen.
  { name: 'build', script: 'build' },
  format,
  // The longest first, so that the others run beside it.
  unitTests('unit tests'),
  lint,
  types,
  { name: 'boundaries', script: 'check:boundaries' },
  { name: 'dead code', script: 'check:dead-code' },
];

/** Needs the build, and both cores. @type {Check} */
export const endToEnd = { name: 'end-to-end tests', script: 'test:e2e', args: [`--reporter=list,${reporter}`] };

/** What is soon done, for the while between two edits. @param {string[]} tests the files that stand near the edit */
export const quickChecks = (tests) => [
  format,
  lint,
  types,
  ...(tests.length ? [unitTests('nearest tests', tests)] : []),
];

/**
 * Counts the tests that it runs; a check without any counts one.
 * @param {Check} check
 * @param {(done: number, all: number) => void} progress
 * @returns {Promise<Outcome>}
 */
export async function runCheck({ name, script, args }, progress) {
  /** @type {Count} */
  let count = { passed: 0, failed: 0, skips: [] };
  const hear = (/** @type {string} */ line) => {
    const told = toldBy(line);
    if (told && 'done' in told) progress(told.done, told.all);
    else if (told) count = told;
    return told !== null;
  };
  const { status, output, seconds } = await runCommand('npm', ['run', '-s', script, ...(args ? ['--', ...args] : [])], {
    hear,
  });
  if (!args && status === 0) count.passed = 1;
  // A failure that no test owns (a file that can't be loaded, a crash, nothing found to run) is one failure too.
  if (count.failed === 0 && (status !== 0 || count.passed === 0)) count.failed = 1;
  return { name, seconds, output, ...count };
}
