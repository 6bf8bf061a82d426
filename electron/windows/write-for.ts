import path from 'node:path';
import { app } from 'electron';
import type { NotDone, SavedFile } from '../../renderer/shell/bridge.ts';
import { mayWriteOverReadOnly } from '../files/dialogs.ts';
import { inTurn } from '../files/in-turn.ts';
import { isReadOnly } from '../files/writing/is-read-only.ts';
import type { Backups } from '../files/writing/keep-backup.ts';
import { writeFile } from '../files/writing/write-file.ts';
import type { StationWindow } from './station-window.ts';

/** Writes a file for a window's user, who is asked first where the file is read-only; null if the user then says no. */
export async function writeFor(
  window: StationWindow,
  file: string,
  content: string | Uint8Array,
  when: Backups['when'],
): Promise<SavedFile | NotDone | null> {
  if ((await isReadOnly(file)) && !(await mayWriteOverReadOnly(window.frame, file))) return null;
  return writeFile(file, content, { folder: path.join(app.getPath('userData'), 'backups'), when });
}

/** A table, picture or paper: not the document. */
export const exportFor = (window: StationWindow, file: string, content: string | Uint8Array) =>
  inTurn(file, () => writeFor(window, file, content, 'if needed'));
