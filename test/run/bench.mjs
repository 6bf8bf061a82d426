// npm run bench: bundles test/bench/index.ts, as Node doesn't run TypeScript before version 22, and runs it.
import { existsSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root, setUp } from '../../electron/start/set-up.mjs';

setUp();
const entry = 'test/bench/index.ts';
if (!existsSync(path.join(root, entry))) {
  console.error(`There is no ${entry} to run.`);
  process.exit(1);
}
const { bundle } = await import('../../electron/start/build.mjs');
await bundle({ entry, outDir: 'dist/bench', file: 'bench.mjs', format: 'es' });
await import(pathToFileURL(path.join(root, 'dist/bench/bench.mjs')).href);
