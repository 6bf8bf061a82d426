// npm run bench, npm run cases: bundles test/NAME/index.ts or report.ts, as Node doesn't run TypeScript before version 22, and runs it.
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root, setUp } from '../../electron/start/set-up.mjs';

/** @type {Record<string, string>} */
const entries = { bench: 'test/bench/index.ts', cases: 'test/cases/report.ts' };

setUp();
const name = process.argv[2] ?? '';
const entry = entries[name];
if (!entry) throw new Error(`nothing called “${name}”; there are ${Object.keys(entries).join(', ')}`);
const { bundle } = await import('../../electron/start/build.mjs');
const outDir = `dist/${name}`;
await bundle({ entry, outDir, file: `${name}.mjs`, format: 'es' });
await import(pathToFileURL(path.join(root, outDir, `${name}.mjs`)).href);
