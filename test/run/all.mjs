// npm test: set-up, every check, and one line of counts at the very end. `npm test -- quick` leaves out what takes long.
import { setUp } from '../../electron/start/set-up.mjs';

const atATime = 2;
const [which, ...rest] = process.argv.slice(2);
if (rest.length || (which !== undefined && which !== 'quick')) {
  console.error(
    `npm test runs all checks, npm test -- quick the quick ones; it can do nothing with “${[which, ...rest].join(' ')}”.`,
  );
  process.exit(2);
}
setUp();
// Only now: these use packages.
const { endToEnd, quickChecks, runCheck, smallChecks } = await import('./checks.mjs');
const { showOutcome, showProgress, showSummary } = await import('./show.mjs');
/** @type {import('./checks.mjs').Outcome[]} */
const outcomes = [];

if (which === 'quick') await runQuick();
else await runAll();
showSummary(outcomes);
process.exitCode = outcomes.some(({ failed }) => failed) ? 1 : 0;

async function runAll() {
  const { provideMachine } = await import('./machine.mjs');
  await provideMachine();
  await runEach(smallChecks);
  await runEach([endToEnd]);
}

async function runQuick() {
  const { findNearestTests } = await import('./nearest-tests.mjs');
  /** @type {string[]} */
  let near = [];
  try {
    const { edited, tests } = findNearestTests();
    near = tests;
    console.log(`${edited.length} files were edited, ${near.length} files of tests stand near them.`);
  } catch {
    console.log('git does not say here what was edited, so no unit test is run.');
  }
  await runEach(quickChecks(near));
  console.log('\nThe other tests and checks go with npm test.');
}

/** @param {readonly import('./checks.mjs').Check[]} checks */
async function runEach(checks) {
  const waiting = [...checks];
  const runWaiting = async () => {
    for (let check = waiting.shift(); check; check = waiting.shift()) {
      const { name } = check;
      const outcome = await runCheck(check, (done, all) => showProgress(name, done, all));
      showOutcome(outcome);
      outcomes.push(outcome);
    }
  };
  await Promise.all(Array.from({ length: atATime }, runWaiting));
}
