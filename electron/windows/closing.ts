import { app } from 'electron';
import { askAboutChanges } from '../files/dialogs.ts';
import { allWindows, bringUp, type StationWindow, sendCommand } from './station-window.ts';

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
    if (window.closing !== 'asking') void ask(window);
  });
  // The page's own question would come second, and can't offer to save.
  window.frame.webContents.on('will-prevent-unload', (event) => event.preventDefault());
  window.frame.on('closed', () => {
    if (quitting && allWindows().length > 0) app.quit();
  });
}

async function ask(window: StationWindow): Promise<void> {
  window.closing = 'asking';
  bringUp(window);
  const answer = await askAboutChanges(window.frame, window.document.name);
  window.closing = null;
  if (answer === 'cancel') return stopClosing(window);
  if (answer === 'discard') return closeNow(window);
  window.closing = 'saving';
  sendCommand(window, 'save');
}

/** The screen has saved, or could not. */
export function afterSave(window: StationWindow, saved: boolean): void {
  if (window.closing !== 'saving') return;
  if (saved) window.closing = 'saved';
  else stopClosing(window);
}

/** The screen has reported its document anew: the closing goes on, unless the user has changed something since. */
export function afterReport(window: StationWindow): void {
  if (window.closing !== 'saved') return;
  if (window.document.edited) stopClosing(window);
  else closeNow(window);
}

function closeNow(window: StationWindow): void {
  window.closing = null;
  window.document = { ...window.document, edited: false };
  window.frame.close();
}

function stopClosing(window: StationWindow): void {
  window.closing = null;
  quitting = false;
}
