import { writeFile } from 'node:fs/promises';
import { app, BrowserWindow } from 'electron';
import { keepToOrigin, refusePermissions, refuseTheRest, safePreferences } from './guards.ts';

/**
 * Prints a page to a PDF without showing it: `electron dist/electron/print-page.cjs ADDRESS FILE`. For the command line
 * where there is no other browser. A page is there once everything on it has come. Ends with 1 where it can't be had.
 * The page is kept to its own origin, and to what the app's own windows may.
 */
async function printPage(url: string, out: string) {
  await app.whenReady();
  refusePermissions();
  keepToOrigin(new URL(url).origin);
  const window = new BrowserWindow({ show: false, webPreferences: safePreferences });
  await window.loadURL(url);
  await writeFile(out, await window.webContents.printToPDF({ preferCSSPageSize: true }));
}

refuseTheRest();
const [url = '', out = ''] = process.argv.slice(-2);
printPage(url, out).then(
  () => app.exit(0),
  (error: unknown) => {
    console.error(error);
    app.exit(1);
  },
);
