// npm run -s station -- ARGS: the command line, built anew when a source is newer than the build.
// stdout belongs to the command alone; set-up and build speak on stderr.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root, setUp } from './set-up.mjs';

const program = path.join(root, 'dist/station/station.mjs');
const common = ['core', 'electron/start/build.mjs', 'package-lock.json'];

setUp();
const stale = [
  ...(isFresh(program, ['electron/station']) ? [] : ['station']),
  // A book and a drawing are made by the screen.
  ...(!process.argv.slice(2).some((word) => ['book', 'drawing'].includes(word)) ||
  isFresh(path.join(root, 'dist/renderer/index.html'), ['renderer'])
    ? []
    : ['renderer', 'electron']),
];
if (stale.length > 0) {
  const build = spawnSync(process.execPath, [path.join(root, 'electron/start/build.mjs'), ...stale], {
    stdio: ['ignore', 2, 2],
  });
  if (build.status !== 0) {
    console.error('The command line could not be built.');
    process.exit(1);
  }
}
await import(pathToFileURL(program).href).catch((error) => {
  console.error(`The command line could not be loaded (${error.message}). Remove the folder dist and try again.`);
  process.exitCode = 3;
});

/** @param {string} product @param {string[]} sources */
function isFresh(product, sources) {
  if (!existsSync(product)) return false;
  const built = statSync(product).mtimeMs;
  return [...common, ...sources].every((source) => newestMs(path.join(root, source)) < built);
}

/** When the file, or the newest entry under the folder, changed; a removed file changes its folder. @param {string} entry @returns {number} */
function newestMs(entry) {
  const stat = statSync(entry);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(entry).map((name) => newestMs(path.join(entry, name))));
}
