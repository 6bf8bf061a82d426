// npm run bench, cases, fuzz: bundles what is listed here, as Node doesn't run TypeScript before version 22, and runs it.
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root, setUp } from '../../electron/start/set-up.mjs';

/** @type {Record<string, Record<string, string>>} */
const entries = {
  bench: { computing: 'test/bench/index.ts', drawing: 'test/bench/drawing/index.ts' },
  cases: { report: 'test/cases/report.ts' },
  acts: { acts: 'test/acts/index.ts' },
  fuzz: { fuzz: 'test/fuzz/index.ts' },
};
/** These find their own files beside them. */
const external = ['playwright-core', '@playwright/test', 'vite', '@vitejs/plugin-react'];

setUp();
const [name = '', only = ''] = process.argv.slice(2);
const parts = entries[name];
if (!parts) throw new Error(`nothing called “${name}”; there are ${Object.keys(entries).join(', ')}`);
// An argument that names no part is for the parts themselves.
const wanted = only in parts ? [only] : Object.keys(parts);
const { build, bundle } = await import('../../electron/start/build.mjs');
for (const part of wanted) {
  const entry = parts[part];
  if (!entry) continue;
  if (part === 'drawing') await build(['renderer']);
  const outDir = `dist/${name}`;
  await bundle({ entry, outDir, file: `${part}.mjs`, format: 'es', external });
  await import(pathToFileURL(path.join(root, outDir, `${part}.mjs`)).href);
}
