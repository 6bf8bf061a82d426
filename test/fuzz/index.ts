// npm run fuzz: spoils the samples in a thousand ways and takes each through all that the program does with a file.
import path from 'node:path';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort } from 'node:worker_threads';
import { goThrough } from './go-through.ts';
import { run } from './run.ts';
import type { Question } from './watch/watched.ts';

if (isMainThread) {
  const { values } = parseArgs({
    args: process.argv.slice(3),
    options: { from: { type: 'string', default: '0' }, count: { type: 'string', default: '1000' } },
  });
  const [from, count] = [Number(values.from), Number(values.count)];
  if (![from, count].every((n) => Number.isSafeInteger(n) && n >= 0))
    throw new Error('--from and --count are whole numbers');
  const folder = path.join(import.meta.dirname, 'kept');
  process.exitCode = await run({ from, count, worker: new URL(import.meta.url), folder, say: console.log });
} else {
  parentPort?.on('message', ({ bytes, number }: Question) =>
    parentPort?.postMessage(goThrough(Buffer.from(bytes), number)),
  );
}
