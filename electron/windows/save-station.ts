import path from 'node:path';
import type { Problem, SavedFile, SaveRequest } from '../../renderer/shell/bridge.ts';
import { askWhereToSave } from '../files/dialogs.ts';
import { addRecentFile } from '../files/recent-files.ts';
import { writeFile } from '../files/write-file.ts';
import { type StationWindow, takeFile, windowShowing } from './station-window.ts';

/** Saves a window's station where the user wants it; null if the user then doesn't. */
export async function saveStation(window: StationWindow, request: SaveRequest): Promise<SavedFile | Problem | null> {
  const file = isGranted(window, request.path)
    ? request.path
    : await askWhereToSave(window.frame, request.path ?? request.suggestedName);
  if (!file) return null;
  const shown = windowShowing(file);
  // The other window would go on with what it has, and the later save of the two would wipe out the earlier.
  if (shown && shown !== window)
    return { error: `${path.basename(file)} is open in another window. Close it there first, or take another name.` };
  const saved = await writeFile(file, request.text);
  if ('path' in saved) {
    takeFile(window, file);
    await addRecentFile(file);
  }
  return saved;
}

function isGranted(window: StationWindow, file: string | null): file is string {
  return file !== null && window.granted.has(file);
}
