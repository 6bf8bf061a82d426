import type { FirstDocument } from '../../renderer/shell/bridge.ts';
import { askWhatToOpen } from '../files/dialogs.ts';
import { readStationFile } from '../files/read-station-file.ts';
import { addRecentFile } from '../files/recent-files.ts';
import { openWindow } from './open-window.ts';
import {
  bringUp,
  frontWindow,
  isUntouched,
  sendCommand,
  sendOpened,
  sendProblem,
  takeFile,
  windowShowing,
} from './station-window.ts';

/** Asks for a file and shows it. */
export async function openByDialog(): Promise<void> {
  const file = await askWhatToOpen(frontWindow()?.frame ?? null);
  if (file) await showFile(file);
}

/** Shows a file where it is shown already, else in the front window if nothing is lost there, else in a new one. */
export async function showFile(file: string): Promise<void> {
  const shown = windowShowing(file);
  if (shown) return bringUp(shown);
  const opened = await readStationFile(file);
  if ('error' in opened) return showDocument({ kind: 'problem', ...opened });
  await addRecentFile(file);
  showDocument({ kind: 'file', file: opened });
}

export function showDocument(document: FirstDocument): void {
  const front = frontWindow();
  // A sentence replaces nothing, so it may go to any window.
  if (!front || (document.kind !== 'problem' && !isUntouched(front))) {
    openWindow(document);
    return;
  }
  bringUp(front);
  if (document.kind === 'file') takeFile(front, document.file.path);
  // A screen that has not asked yet is not listening yet either.
  if (front.first) front.first = document;
  else if (document.kind === 'file') sendOpened(front, document.file);
  else if (document.kind === 'sample') sendCommand(front, `sample:${document.sample}`);
  else if (document.kind === 'problem') sendProblem(front, { error: document.error });
}
