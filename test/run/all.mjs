// npm test: set-up, every check, and one line of counts at the very end.
import { setUp } from '../../electron/start/set-up.mjs';

setUp();
// Only now: these use packages.
const { provideMachine } = await import('./machine.mjs');
const { endToEnd, quickChecks, runCheck } = await import('./checks.mjs');

const atATime = 2;
/** @type {import('./checks.mjs').Outcome[]} */
const outcomes = [];

await provideMachine();
const waiting = [...quickChecks];
await Promise.all(Array.from({ length: atATime }, runWaiting));
outcomes.push(show(await runCheck(endToEnd)));

const failed = sum('failed');
const skipped = sum('skipped');
console.log(`\n${sum('passed')} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed ? 1 : 0;

async function runWaiting() {
  for (let check = waiting.shift(); check; check = waiting.shift()) outcomes.push(show(await runCheck(check)));
}

/** @param {import('./checks.mjs').Outcome} outcome */
function show(outcome) {
  const { name, seconds, passed, failed: bad, skipped: left, output } = outcome;
  const count = `${passed} passed${bad ? `, ${bad} failed` : ''}${left ? `, ${left} skipped` : ''}`;
  console.log(`${bad ? 'FAILED' : 'ok    '}  ${name.padEnd(18)} ${seconds.toFixed(1).padStart(6)} s  ${count}`);
  if (bad) console.log(`${output.trim()}\n`);
  return outcome;
}

/** @param {'passed' | 'failed' | 'skipped'} part */
function sum(part) {
  return outcomes.reduce((total, outcome) => total + outcome[part], 0);
}
