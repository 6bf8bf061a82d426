import { app } from 'electron';
import { askAboutChanges, askAboutSilence } from '../files/dialogs.ts';
import { isAnswering } from './answering.ts';
import { allWindows, bringUp, type StationWindow, sendSaveToClose } from './station-window.ts';

let quitting = false;

/** Quitting closes window by window, and each may first ask about its changes; this sees to the rest. */
export function watchQuit(): void {
  app.on('before-quit', () => {
    quitting = true;
  });
  app.on('window-all-closed', () => {
    if (quitting || process.platform !== 'darwin') app.quit();
  });
}

/** No window closes over unsaved changes without a question. */
export function askBeforeClosing(window: StationWindow): void {
  window.frame.on('close', (event) => {
    // A page that has died can't save any more.
    if (!window.document.edited || window.frame.webContents.isCrashed()) return;
    event.preventDefault();
    if (window.closing !== 'asking' && !(quitting && isOtherClosing(window))) void ask(window);
  });
  // The page's own question would come second, and can't offer to save.
  window.frame.webContents.on('will-prevent-unload', (event) => event.preventDefault());
  window.frame.webContents.on('render-process-gone', () => stopClosing(window));
  window.frame.on('closed', () => {
    if (quitting && allWindows().length > 0) app.quit();
  });
}

/** Quitting asks in one window after the other, so that a cancel in one leaves the rest unasked. */
const isOtherClosing = (window: StationWindow): boolean =>
  allWindows().some((other) => other !== window && other.closing !== null);

async function ask(window: StationWindow): Promise<void> {
  window.closing = 'asking';
  bringUp(window);
  if (!(await isAnswering(window))) return decideOnSilence(window);
  const answer = await askAboutChanges(window.frame, window.document.name);
  // Its screen may have died, or been closed, meanwhile.
  if (window.closing !== 'asking') return;
  if (answer === 'cancel') return stopClosing(window);
  if (answer === 'discard') return closeNow(window);
  window.closing = 'saving';
  sendSaveToClose(window);
  await watchSaving(window);
}

/** A save may take its time, with questions of its own; a screen that hangs in the middle of it is told about. */
async function watchSaving(window: StationWindow): Promise<void> {
  while (window.closing === 'saving') {
    const answers = await isAnswering(window);
    if (!answers && window.closing === 'saving') return decideOnSilence(window);
    await new Promise((resolve) => setTimeout(resolve, 1000));
  }
}

async function decideOnSilence(window: StationWindow): Promise<void> {
  const wait = (await askAboutSilence(window.frame, window.document.name)) === 'wait';
  if (window.closing === null) return;
  if (wait) stopClosing(window);
  else window.frame.destroy();
}

/** The screen says that its save for closing has ended. */
export function afterSave(window: StationWindow, saved: boolean): void {
  if (window.closing !== 'saving') return;
  // The user may have changed something since.
  if (saved && !window.document.edited) closeNow(window);
  else stopClosing(window);
}

function closeNow(window: StationWindow): void {
  window.closing = null;
  window.document = { ...window.document, edited: false };
  window.frame.close();
}

function stopClosing(window: StationWindow): void {
  if (window.closing === null) return;
  window.closing = null;
  quitting = false;
}
