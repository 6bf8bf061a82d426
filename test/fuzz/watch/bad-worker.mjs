// Stands in for the worker in the tests of its watchdog: what it does is the number that it is asked for.
import { parentPort } from 'node:worker_threads';

const quiet = { verdict: 'quiet', trouble: [] };

/** @type {Record<number, () => unknown>} */
const doings = {
  1: () => {
    for (;;);
  },
  2: () => {
    const kept = [];
    for (;;) kept.push(Array.from({ length: 1000 }, (_, n) => ({ n })));
  },
  3: () => {
    throw new Error('thrown where nothing catches it');
  },
  4: () => process.exit(7),
  5: () => ({ verdict: 'nonsense', trouble: ['a bad word'] }),
};

parentPort?.on('message', ({ number }) => parentPort?.postMessage(doings[number]?.() ?? quiet));
