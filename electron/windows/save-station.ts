import path from 'node:path';
import type { Problem, SavedFile, SaveRequest } from '../../renderer/shell/bridge.ts';
import { askWhereToSave } from '../files/dialogs.ts';
import { inTurn } from '../files/in-turn.ts';
import { addRecentFile } from '../files/recent-files.ts';
import { type StationWindow, takeFile, windowShowing } from './station-window.ts';
import { writeFor } from './write-for.ts';

/** Saves a window's station where the user wants it; null if the user then doesn't. */
export async function saveStation(window: StationWindow, request: SaveRequest): Promise<SavedFile | Problem | null> {
  const file = isGranted(window, request.path)
    ? request.path
    : await askWhereToSave(window.frame, request.path ?? request.suggestedName);
  return file ? inTurn(file, () => saveTo(window, file, request.text)) : null;
}

async function saveTo(window: StationWindow, file: string, text: string): Promise<SavedFile | Problem | null> {
  const shown = windowShowing(file);
  // The other window would go on with what it has, and the later save of the two would wipe out the earlier.
  if (shown && shown !== window)
    return { error: `${path.basename(file)} is open in another window. Close it there first, or take another name.` };
  const saved = await writeFor(window, file, text, 'always');
  if (saved && 'path' in saved) {
    takeFile(window, file);
    await addRecentFile(file);
  }
  return saved;
}

function isGranted(window: StationWindow, file: string | null): file is string {
  return file !== null && window.granted.has(file);
}
