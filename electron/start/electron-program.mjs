import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './set-up.mjs';

const packageFolder = path.join(root, 'node_modules/electron');
const fetchLimitMs = 120_000;

/** Why no window can be shown on this machine, or null if one can. */
export function noDisplay() {
  const { DISPLAY, WAYLAND_DISPLAY } = process.env;
  if (process.platform !== 'linux' || DISPLAY || WAYLAND_DISPLAY) return null;
  return 'there is no display here (neither DISPLAY nor WAYLAND_DISPLAY is set)';
}

/**
 * Path of Electron's program, or null if it is not there. Never asks the package itself: importing `electron`
 * from Node starts a download.
 */
export function findElectron() {
  const named = path.join(packageFolder, 'path.txt');
  const elsewhere = process.env['ELECTRON_OVERRIDE_DIST_PATH'];
  if (!existsSync(named) && !elsewhere) return null;
  const program = existsSync(named) ? readFileSync(named, 'utf8') : 'electron';
  const file = path.join(elsewhere ?? path.join(packageFolder, 'dist'), program);
  return existsSync(file) ? file : null;
}

/**
 * Downloads Electron's program with its own installer. Null if it worked, else why not.
 * @returns {string | null}
 */
export function fetchElectron() {
  console.log(`Fetching Electron's program, once (up to ${fetchLimitMs / 1000} s; Ctrl-C stops it) ...`);
  const result = spawnSync(process.execPath, [path.join(packageFolder, 'install.js')], {
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
    timeout: fetchLimitMs,
  });
  if (findElectron()) return null;
  if (result.error && 'code' in result.error && result.error.code === 'ETIMEDOUT')
    return "the download of Electron's program took too long";
  const reason = result.stderr.split('\n').find((line) => line.trim()) ?? `its installer ended with ${result.status}`;
  return `Electron's program could not be downloaded (${reason.trim()})`;
}
