import type { DesktopBridge } from '../../renderer/shell/bridge.ts';
import { askWhatToOpen, askWhereToExport } from '../files/dialogs.ts';
import { readStationFile } from '../files/read-station-file.ts';
import { addRecentFile } from '../files/recent-files.ts';
import { changedSince } from '../files/writing/changed-since.ts';
import { bringBack, documentBefore, listKept, throwAway } from '../windows/bring-back.ts';
import { afterSave } from '../windows/closing.ts';
import { forgetWork, keepWork } from '../windows/kept-work.ts';
import { openWindow } from '../windows/open-window.ts';
import { pdfOfPage, printPage } from '../windows/paper.ts';
import { saveStation } from '../windows/save-station.ts';
import { showFile } from '../windows/show-document.ts';
import { isUntouched, type StationWindow, takeFile, windowShowing } from '../windows/station-window.ts';
import { exportFor } from '../windows/write-for.ts';
import type { Call } from './channels.ts';

type Answer<Name extends Call> = (
  window: StationWindow,
  ...args: Parameters<DesktopBridge[Name]>
) => ReturnType<DesktopBridge[Name]>;

/** What each call does for the window that asks. */
export const answers: { readonly [Name in Call]: Answer<Name> } = {
  firstDocument: async (window) => {
    const first = window.first;
    window.first = null;
    // Asked again: the page died, or was loaded anew by hand.
    return first ?? documentBefore(window);
  },

  newWindow: async () => {
    openWindow({ kind: 'empty' });
    return null;
  },

  openFile: async (window) => {
    const file = await askWhatToOpen(window.frame);
    if (!file) return null;
    if (windowShowing(file) || !isUntouched(window)) {
      await showFile(file);
      return null;
    }
    const opened = await readStationFile(file);
    if ('error' in opened) return opened;
    takeFile(window, file);
    await addRecentFile(file);
    return opened;
  },

  saveFile: (window, request) => saveStation(window, request),

  lookAtFile: async (window, { path, stamp }) => (window.granted.has(path) ? changedSince(path, stamp) : null),

  exportFile: async (window, { suggestedName, content, encoding }) => {
    const file = await askWhereToExport(window.frame, suggestedName);
    if (file === null) return null;
    return exportFor(window, file, encoding === 'base64' ? Buffer.from(content, 'base64') : content);
  },

  listKept: (_window, { unasked }) => listKept(unasked),

  bringBack: (window, { id }) => bringBack(window, id),

  throwAway: (_window, { id }) => throwAway(id),

  keepWork: (window, work) => keepWork(window, work),

  forgetWork: (window) => forgetWork(window),

  print: (window) => printPage(window),

  savePdf: async (window, { suggestedName }) => {
    const file = await askWhereToExport(window.frame, suggestedName);
    if (file === null) return null;
    const pdf = await pdfOfPage(window);
    return 'error' in pdf ? pdf : exportFor(window, file, pdf);
  },

  saveEnded: async (window, { saved }) => {
    afterSave(window, saved);
    return null;
  },
};
