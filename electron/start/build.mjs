// Builds what is named (renderer, electron, station), or all. Vite does the lot: one bundler, one set of settings.
import { existsSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root, setUp } from './set-up.mjs';

/** @typedef {'renderer' | 'electron' | 'station'} Part */

/** @type {Record<Part, () => Promise<void>>} */
const builders = { renderer: buildRenderer, electron: buildElectron, station: buildStation };

/** @param {Part[]} parts @returns {Promise<void>} */
export async function build(parts) {
  for (const part of parts) await builders[part]();
}

async function buildRenderer() {
  const vite = await import('vite');
  await vite.build({ configFile: path.join(root, 'renderer/vite.config.ts'), logLevel: 'warn' });
}

async function buildElectron() {
  await bundle({ entry: 'electron/main.ts', outDir: 'dist/electron', file: 'main.cjs', format: 'cjs' });
  // A sandboxed preload must be one CommonJS file that requires nothing but electron.
  await bundle({ entry: 'electron/print-page.ts', outDir: 'dist/electron', file: 'print-page.cjs', format: 'cjs' });
  await bundle({ entry: 'electron/preload.ts', outDir: 'dist/electron', file: 'preload.cjs', format: 'cjs' });
}

async function buildStation() {
  await bundle({ entry: 'electron/station/main.ts', outDir: 'dist/station', file: 'station.mjs', format: 'es' });
}

/**
 * One file with all that it needs, electron and the packages in `external` apart.
 * @param {{ entry: string, outDir: string, file: string, format: 'cjs' | 'es', external?: string[] }} what
 */
export async function bundle({ entry, outDir, file, format, external = [] }) {
  const vite = await import('vite');
  const apart = ['electron', ...external];
  await vite.build({
    configFile: false,
    root,
    logLevel: 'warn',
    ssr: { noExternal: true, external: apart },
    build: {
      ssr: entry,
      outDir,
      emptyOutDir: false,
      target: 'node20',
      sourcemap: true,
      rolldownOptions: { external: apart, output: { format, entryFileNames: file, codeSplitting: false } },
    },
  });
}

/** @param {string} file */
const isThisFile = (file) => existsSync(file) && pathToFileURL(file).href === import.meta.url;

if (isThisFile(process.argv[1] ?? '')) {
  setUp();
  const named = process.argv.slice(2);
  const unknown = named.find((name) => !(name in builders));
  if (unknown) {
    console.error(`There is no part "${unknown}" to build; there are ${Object.keys(builders).join(', ')}.`);
    process.exit(1);
  }
  try {
    await build(/** @type {Part[]} */ (named.length ? named : Object.keys(builders)));
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}
