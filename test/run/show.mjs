import { stdout } from 'node:process';

// On a terminal one line is written over and over; a log gets a new one now and then.
const everyMs = stdout.isTTY ? 200 : 30_000;
/** How far each check is that runs. @type {Map<string, string>} */
const running = new Map();
let shownAt = performance.now();

/** @param {string} name @param {number} done @param {number} all */
export function showProgress(name, done, all) {
  running.set(name, `${name}: ${done} of ${all}`);
  if (performance.now() - shownAt < everyMs) return;
  shownAt = performance.now();
  const line = `        ${[...running.values()].join(', ')}`;
  if (stdout.isTTY) stdout.write(`\r${line}\x1b[K`);
  else console.log(line);
}

/** @param {import('./checks.mjs').Outcome} outcome */
export function showOutcome({ name, seconds, output, ...count }) {
  running.delete(name);
  if (stdout.isTTY) stdout.write('\r\x1b[K');
  console.log(
    `${count.failed ? 'FAILED' : 'ok    '}  ${name.padEnd(18)} ${seconds.toFixed(1).padStart(6)} s  ${inWords(count)}`,
  );
  if (count.failed) console.log(`${output.trim()}\n`);
}

/** What was skipped and why, and all counts in the last line. @param {readonly import('./checks.mjs').Outcome[]} outcomes */
export function showSummary(outcomes) {
  const skips = outcomes.flatMap((outcome) => outcome.skips);
  const reasons = [...new Set(skips.map(({ reason }) => reason))];
  if (skips.length) console.log('\nSkipped, and why:');
  for (const reason of reasons) {
    const tests = skips.filter((skip) => skip.reason === reason).map(({ test }) => test);
    console.log(`${String(tests.length).padStart(4)}  ${reason} (${tests[0]}${tests.length > 1 ? ', ...' : ''})`);
  }
  const sum = (/** @type {'passed' | 'failed'} */ part) =>
    outcomes.reduce((total, outcome) => total + outcome[part], 0);
  console.log(`\n${inWords({ passed: sum('passed'), failed: sum('failed'), skips }, true)}`);
}

/** @param {import('./checks.mjs').Count} count @param {boolean} [all] also what is none, but for skips */
const inWords = ({ passed, failed, skips }, all = false) =>
  [
    `${passed} passed`,
    ...(failed || all ? [`${failed} failed`] : []),
    ...(skips.length ? [`${skips.length} skipped`] : []),
  ].join(', ');
