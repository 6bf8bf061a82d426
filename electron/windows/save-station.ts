import { existsSync } from 'node:fs';
import path from 'node:path';
import type { FileChanged, NotDone, SavedFile, SaveRequest } from '../../renderer/shell/bridge.ts';
import { askWhereToSave } from '../files/dialogs.ts';
import { inTurn } from '../files/in-turn.ts';
import { addRecentFile } from '../files/recent-files.ts';
import { changedSince } from '../files/writing/changed-since.ts';
import { type StationWindow, takeFile, windowShowing } from './station-window.ts';
import { writeFor } from './write-for.ts';

type Answer = SavedFile | FileChanged | NotDone | null;

/** Saves a window's station where the user wants it; null if the user then doesn't. */
export async function saveStation(window: StationWindow, request: SaveRequest): Promise<Answer> {
  const { path: given, stamp, text } = request;
  if (isGranted(window, given))
    return inTurn(given, async () => (await changeOf(given, stamp)) ?? saveTo(window, given, text));
  const file = await askWhereToSave(window.frame, given ?? request.suggestedName);
  // Where the user has just chosen the file, the system has asked about replacing it.
  return file ? inTurn(file, () => saveTo(window, file, text)) : null;
}

/** What somebody else has done to the file. A folder that is gone too is for the save to tell. */
async function changeOf(file: string, stamp: SaveRequest['stamp']): Promise<FileChanged | null> {
  const change = stamp && (await changedSince(file, stamp));
  return change?.changed || existsSync(path.dirname(file)) ? change : null;
}

async function saveTo(window: StationWindow, file: string, text: string): Promise<Answer> {
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
