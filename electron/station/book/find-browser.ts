import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { findElectron } from '../../start/electron-program.mjs';
import { quoted } from '../printable.ts';
import type { Printer } from './print-page.ts';

/** Where Chromium and its relatives are installed, by system. */
const places: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: [
    'chromium',
    'chromium-browser',
    'chromium-headless-shell',
    'google-chrome',
    'google-chrome-stable',
    'microsoft-edge',
  ],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
};

/** The variable that names a browser which is somewhere else. */
const browserVariable = 'STATIONWRIGHT_BROWSER';

const ownScript = fileURLToPath(new URL('../electron/print-page.cjs', import.meta.url));

/** What can print a page on this machine: a browser, else Electron's program where it was fetched, else null. */
export function findPrinter(): Printer | null {
  const browser = findBrowser();
  if (browser) return { program: browser };
  const electron = findElectron();
  return electron && existsSync(ownScript) ? { program: electron, script: ownScript } : null;
}

/** A sentence for a machine without any; `also` is what else was looked for. */
export function nothingToDrawIn(also: string, env: NodeJS.ProcessEnv = process.env): string {
  const named = env[browserVariable];
  if (named !== undefined) return `${browserVariable} names ${quoted(named)}, and there is no such program.`;
  return `No Chromium, Chrome or Edge was found${also && `, ${also}`}, and the screen draws it in one. Install one, or name it in ${browserVariable}.`;
}

/** A browser of this machine that can print a page without a window, or null. The variable goes before all. */
export function findBrowser(env: NodeJS.ProcessEnv = process.env, platform = process.platform): string | null {
  const named = env[browserVariable];
  if (named !== undefined) return existsSync(named) ? named : null;
  const folders = (env.PATH ?? '').split(path.delimiter);
  const candidates = (places[platform] ?? []).flatMap((name) =>
    path.isAbsolute(name) || platform !== 'linux' ? [name] : folders.map((folder) => path.join(folder, name)),
  );
  return candidates.find((file) => existsSync(file)) ?? null;
}
