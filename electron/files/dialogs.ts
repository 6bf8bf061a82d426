import { existsSync } from 'node:fs';
import path from 'node:path';
import { type BrowserWindow, dialog } from 'electron';
import { fitName, isFittingName } from './fit-name.ts';

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
  // A name that leaves no room for the ending stays as it was typed.
  if (!isFittingName(complete)) return file;
  // The system asked about replacing the name as it was typed, not about this one.
  return existsSync(complete) && !(await mayReplace(window, complete)) ? null : complete;
}

/** Where to put a table, picture or PDF, or null. */
export function askWhereToExport(window: BrowserWindow, suggested: string): Promise<string | null> {
  const ending = path.extname(suggested).slice(1);
  return askWhere(window, suggested, ending ? { name: ending.toUpperCase(), extensions: [ending] } : allFiles);
}

async function askWhere(window: BrowserWindow, suggested: string, kind: Electron.FileFilter): Promise<string | null> {
  const defaultPath = path.join(path.dirname(suggested), fitName(path.basename(suggested)));
  const answer = await dialog.showSaveDialog(window, { defaultPath, filters: [kind] });
  return answer.canceled || !answer.filePath ? null : answer.filePath;
}

const mayReplace = (window: BrowserWindow, file: string): Promise<boolean> =>
  mayGoOn(window, { message: `${path.basename(file)} is there already.`, buttons: ['Replace', 'Cancel'] });

/** Whether to write over a file that is marked as not to be written to, or belongs to somebody else. */
export const mayWriteOverReadOnly = (window: BrowserWindow, file: string): Promise<boolean> =>
  mayGoOn(window, {
    message: `${path.basename(file)} can only be read.`,
    detail: 'Somebody has protected it from being changed. Cancel and take another name to leave it as it is.',
    buttons: ['Save over it', 'Cancel'],
  });

async function mayGoOn(window: BrowserWindow, question: Electron.MessageBoxOptions): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'question',
    defaultId: 1,
    cancelId: 1,
    noLink: true,
    ...question,
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

/** What to do with a window that is to close and whose screen does not answer. */
export async function askAboutSilence(window: BrowserWindow, name: string): Promise<'wait' | 'close'> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: 'This window does not answer.',
    detail: `Until it does, the changes to ${name || 'its station'} can't be saved. What was kept of them, all but the last moment, is offered at the next start.`,
    buttons: ['Wait', 'Close without saving'],
    defaultId: 0,
    cancelId: 0,
    noLink: true,
  });
  return response === 0 ? 'wait' : 'close';
}

/** What to do with a window whose screen does not answer; the question ends by itself with the signal. */
export async function askToEnd(window: BrowserWindow, signal: AbortSignal): Promise<'wait' | 'end'> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: 'This window does not answer.',
    detail: 'It may be busy and come back. If its work is ended, it can be loaded again as it was a moment before.',
    buttons: ['Wait', 'End its work'],
    defaultId: 0,
    cancelId: 0,
    noLink: true,
    signal,
  });
  return response === 0 ? 'wait' : 'end';
}
