import { cpSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const built = path.join(import.meta.dirname, '../../dist');

/**
 * The built shell around an empty page, which leaves it to the test to say what the screen says. Returns the folder.
 * The page has the screen's policy and a script file, so that what it lacks is the screen alone.
 */
export function makeBareApp(folder: string): string {
  mkdirSync(path.join(folder, 'renderer'), { recursive: true });
  cpSync(path.join(built, 'electron'), path.join(folder, 'electron'), { recursive: true });
  writeFileSync(path.join(folder, 'package.json'), JSON.stringify({ name: 'bare', main: 'electron/main.cjs' }));
  writeFileSync(path.join(folder, 'renderer/index.html'), page);
  writeFileSync(path.join(folder, 'renderer/heard.js'), script);
  writeFileSync(path.join(folder, 'secret.txt'), 'outside the page');
  return folder;
}

const page = `<!doctype html><meta charset="utf-8"><title>Page</title>
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; connect-src 'self'">
<script type="module" src="./heard.js"></script><h1>Bare page</h1>`;

/** Keeps what the shell sends, for the test to look at. */
const script = `window.heard = [];
const keep = (what) => (value) => window.heard.push([what, value]);
stationwright.onCommand(keep('command'));
stationwright.onOpened(keep('opened'));
stationwright.onProblem(keep('problem'));
stationwright.onSaveToClose(() => window.heard.push(['saveToClose', null]));
document.body.dataset.ready = 'yes';`;
