import { existsSync } from 'node:fs';
import path from 'node:path';
import { type BrowserWindow, dialog } from 'electron';

const stationEnding = '.station.json';
const stations = { name: 'Stations', extensions: ['json'] };
const allFiles = { name: 'All files', extensions: ['*'] };

/** The file that the user chose, or null. Without a window (macOS, all closed) the dialog stands alone. */
export async function askWhatToOpen(window: BrowserWindow | null): Promise<string | null> {
  const options: Electron.OpenDialogOptions = { properties: ['openFile'], filters: [stations, allFiles] };
  const answer = await (window ? dialog.showOpenDialog(window, options) : dialog.showOpenDialog(options));
  return answer.canceled ? null : (answer.filePaths[0] ?? null);
}

/** Where to save the station, or null. A name typed without an ending gets the station's. */
export async function askWhereToSave(window: BrowserWindow, suggested: string): Promise<string | null> {
  const file = await askWhere(window, suggested, stations);
  if (!file || path.extname(file) !== '') return file;
  const complete = file + stationEnding;
  // The system asked about replacing the name as it was typed, not about this one.
  return existsSync(complete) && !(await mayReplace(window, complete)) ? null : complete;
}

/** Where to put a table, picture or PDF, or null. */
export function askWhereToExport(window: BrowserWindow, suggested: string): Promise<string | null> {
  const ending = path.extname(suggested).slice(1);
  return askWhere(window, suggested, ending ? { name: ending.toUpperCase(), extensions: [ending] } : allFiles);
}

async function askWhere(window: BrowserWindow, defaultPath: string, kind: Electron.FileFilter): Promise<string | null> {
  const answer = await dialog.showSaveDialog(window, { defaultPath, filters: [kind] });
  return answer.canceled || !answer.filePath ? null : answer.filePath;
}

async function mayReplace(window: BrowserWindow, file: string): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'question',
    message: `${path.basename(file)} is there already.`,
    buttons: ['Replace', 'Cancel'],
    defaultId: 1,
    cancelId: 1,
  });
  return response === 0;
}

/** What to do with the unsaved changes of a window that is about to close. */
export async function askAboutChanges(window: BrowserWindow, name: string): Promise<'save' | 'discard' | 'cancel'> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: `Save the changes to ${name || 'this station'}?`,
    detail: 'Without saving, the changes since the last save are lost.',
    buttons: ['Save', "Don't save", 'Cancel'],
    defaultId: 0,
    cancelId: 2,
    noLink: true,
  });
  return response === 0 ? 'save' : response === 1 ? 'discard' : 'cancel';
}
