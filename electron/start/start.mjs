// npm start: the desktop window where one can be shown, else the same screen in the browser.
import { spawn } from 'node:child_process';
import path from 'node:path';
import { fetchElectron, findElectron, noDisplay } from './electron-program.mjs';
import { serve } from './serve.mjs';
import { root, setUp } from './set-up.mjs';

const earlyMs = 15_000;
const args = process.argv.slice(2).filter((arg) => arg !== '--browser');

setUp();
const { build } = await import('./build.mjs');
await build(['renderer', 'electron']);

const why = process.argv.includes('--browser') ? 'you asked for the browser' : (noDisplay() ?? (await openWindow()));
await openInBrowser(why);

/** Returns why there was no window; ends the process when a window that was shown is closed. */
async function openWindow() {
  if (!findElectron()) {
    const failed = fetchElectron();
    if (failed) return failed;
  }
  const started = performance.now();
  const code = await runElectron(/** @type {string} */ (findElectron()));
  if (code === 0 || performance.now() - started > earlyMs) process.exit(typeof code === 'number' ? code : 1);
  return `Electron stopped at once (${code})`;
}

/** @param {string} program @returns {Promise<number | string>} */
function runElectron(program) {
  const env = { ...process.env };
  // Set by some editors' terminals; Electron would then run as plain Node, without a window.
  delete env['ELECTRON_RUN_AS_NODE'];
  // Chromium's sandbox refuses to run for root on Linux.
  const sandbox = process.platform === 'linux' && process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const child = spawn(program, [...sandbox, root, ...args], { stdio: 'inherit', env });
  return new Promise((resolve) => {
    child.on('error', (error) => resolve(error.message));
    child.on('exit', (code, signal) => resolve(code ?? signal ?? 'unknown'));
  });
}

/** @param {string} reason */
async function openInBrowser(reason) {
  const port = process.env['PORT'] ?? '4173';
  const { url } = await serve(path.join(root, 'dist/renderer'), Number(port)).catch((error) => {
    console.error(
      `The screen can't be served on port ${port} (${error.message}). Name another one: PORT=4173 npm start`,
    );
    process.exit(1);
  });
  console.log(`Stationwright runs in the browser, not in its own window: ${reason}.`);
  if (args.length) console.log(`The browser can't be handed a file from here; open it there: ${args.join(' ')}`);
  console.log(`Open ${url}\nPress Ctrl-C to stop.`);
  if (process.stdout.isTTY && process.env['BROWSER'] !== 'none' && !noDisplay()) showInBrowser(url);
}

/** @param {string} url */
function showInBrowser(url) {
  const openers = { darwin: ['open', url], win32: ['cmd', '/c', 'start', '', url] };
  const [command = '', ...rest] = openers[/** @type {'darwin'} */ (process.platform)] ?? ['xdg-open', url];
  const child = spawn(command, rest, { stdio: 'ignore', detached: true });
  // No opener on this machine: the printed address is enough.
  child.on('error', () => {});
  child.unref();
}
