// Runs before any package is there: Node built-ins only.
import './require-node.mjs';
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, lstatSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';

export const root = path.join(import.meta.dirname, '../..');
const lockFile = path.join(root, 'package-lock.json');
const modules = path.join(root, 'node_modules');
const stampFile = path.join(modules, '.set-up');

/** Ends the process with a sentence if the packages can't be had; says on stderr what it does, if it does something. */
export function setUp() {
  const wanted = createHash('sha256').update(readFileSync(lockFile)).digest('hex');
  if (isFresh(wanted)) return;
  // Installing through a link would empty the folder of whoever it belongs to.
  if (lstatSync(modules, { throwIfNoEntry: false })?.isSymbolicLink())
    stop(
      'node_modules is a link to a folder with other packages than package-lock.json names. Remove the link and try again.',
    );
  console.error('Setting up: installing the packages that package-lock.json names (npm ci) ...');
  const started = performance.now();
  const result = installPackages();
  if (result.status !== 0) {
    console.error(`${result.stdout}${result.stderr}`.trim());
    stop(
      'The packages could not be installed. Set-up needs the npm registry once: check the connection and try again.',
    );
  }
  writeFileSync(stampFile, wanted);
  console.error(`Setting up: done in ${((performance.now() - started) / 1000).toFixed(1)} s.`);
}

/** @param {string} wanted */
function isFresh(wanted) {
  if (existsSync(stampFile)) return readFileSync(stampFile, 'utf8') === wanted;
  // Installed by hand: npm leaves its own copy of the lock file, written after the lock file that it followed.
  const installed = path.join(modules, '.package-lock.json');
  return existsSync(installed) && statSync(installed).mtimeMs >= statSync(lockFile).mtimeMs;
}

function installPackages() {
  // No install scripts: nothing here needs one, and Electron's program is fetched on the first start instead.
  const args = ['ci', '--ignore-scripts', '--loglevel=error', '--include=dev', '--include=optional'];
  const npm = process.env['npm_execpath'];
  const [command, first] = npm?.endsWith('.js') ? [process.execPath, [npm]] : ['npm', []];
  // Windows has npm as npm.cmd, which only a shell finds; the arguments are fixed, so nothing needs quoting.
  const shell = command === 'npm' && process.platform === 'win32';
  return spawnSync(command, [...first, ...args], { cwd: root, encoding: 'utf8', shell });
}

/** @param {string} sentence @returns {never} */
function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}
