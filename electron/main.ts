import { app } from 'electron';
import { listenToScreens } from './bridge/listen-to-screens.ts';
import { namedFiles } from './files/named-files.ts';
import { watchRecentFiles } from './files/recent-files.ts';
import { refusePermissions, refuseTheRest } from './guards.ts';
import { announcePage, servePage } from './page.ts';
import { showMenuBar } from './show-menu-bar.ts';
import { watchQuit } from './windows/closing.ts';
import { settleBeforeQuit } from './windows/kept-work.ts';
import { openWindow } from './windows/open-window.ts';
import { showFile } from './windows/show-document.ts';
import { allWindows, bringUp, frontWindow } from './windows/station-window.ts';

app.setName('Stationwright');
// One program for all windows, so that no two of them save over the same file.
if (app.requestSingleInstanceLock()) run();
else app.quit();

function run(): void {
  // macOS hands over a double-clicked file by event, which can come before the app is ready.
  const early: string[] = [];
  app.on('open-file', (event, file) => {
    event.preventDefault();
    if (app.isReady()) void showFile(file);
    else early.push(file);
  });
  app.on('second-instance', (_event, commandLine, folder) => void startAgain(namedFiles(commandLine, folder)));
  app.on('activate', () => {
    if (allWindows().length === 0) openWindow({ kind: 'welcome' });
  });
  announcePage();
  refuseTheRest();
  watchQuit();
  settleBeforeQuit();
  listenToScreens();
  void app.whenReady().then(() => start([...early, ...namedFiles(process.argv, process.cwd())]));
}

async function start(files: string[]): Promise<void> {
  refusePermissions();
  servePage();
  watchRecentFiles(showMenuBar);
  showMenuBar();
  for (const file of files) await showFile(file);
  if (allWindows().length === 0) openWindow({ kind: 'welcome' });
}

async function startAgain(files: string[]): Promise<void> {
  for (const file of files) await showFile(file);
  const front = frontWindow();
  if (files.length === 0 && front) bringUp(front);
}
