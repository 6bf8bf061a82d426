import { randomUUID } from 'node:crypto';
import path from 'node:path';
import type { Brought, FirstDocument, KeptDocument, NotDone } from '../../renderer/shell/bridge.ts';
import { fileStamp } from '../files/file-stamp.ts';
import { inTurn } from '../files/in-turn.ts';
import { type KeptFile, keptFile, keptFiles, keptPath } from '../files/kept-files.ts';
import { readStationFile } from '../files/read-station-file.ts';
import { removeKept } from './kept-work.ts';
import { openWindow } from './open-window.ts';
import { allWindows, isUntouched, type StationWindow, takeFile, windowShowing } from './station-window.ts';

/** What was offered unasked in this run. */
const offered = new Set<string>();

/** What no window has open, the newest first; `unasked` only what was not listed so before. */
export async function listKept(unasked: boolean): Promise<KeptDocument[]> {
  const left = (await keptFiles()).filter(({ id }) => !isTaken(id) && !(unasked && offered.has(id)));
  const found: KeptDocument[] = [];
  for (const kept of left) {
    // It was saved in the moment before the end.
    if (await isInItsFile(kept)) await removeKept(kept.id);
    else found.push({ ...kept, fileChanged: await hasFileChanged(kept) });
  }
  for (const { id } of found) offered.add(id);
  return found;
}

/** Lets a window have it that shows nothing else, or its file as it is; else opens one for it. */
export async function bringBack(window: StationWindow, id: string): Promise<Brought | NotDone> {
  const kept = await keptFile(id);
  if (!kept) return { error: 'It is not there any more: it was thrown away or saved meanwhile.' };
  if (isTaken(id)) return { error: 'Another window has brought it back already.' };
  const file = kept.about?.path ?? null;
  const shown = file === null ? null : windowShowing(file);
  if (file !== null && shown && (shown !== window || window.document.edited))
    return { error: `${path.basename(file)} is open. Close its window first, then bring the unsaved work back.` };
  if (!shown && !isUntouched(window)) {
    openWindow({ kind: 'kept', kept: { ...kept, fileChanged: false } });
    return 'elsewhere';
  }
  window.keptId = id;
  if (file !== null) takeFile(window, file);
  window.document = { ...window.document, edited: true };
  offered.delete(id);
  return 'here';
}

export const throwAway = async (id: string): Promise<NotDone | null> =>
  isTaken(id) ? { error: 'Another window has brought it back: it stays there.' } : removeKept(id);

/**
 * What a window showed before its page was loaded anew. Unsaved work is free then, for the page to bring back if it
 * can read it: nothing else that it shows will take its place.
 */
export async function documentBefore(window: StationWindow): Promise<FirstDocument> {
  const { keptId, document } = window;
  const kept = await inTurn(keptPath(keptId), () => keptFile(keptId));
  if (kept) {
    window.keptId = randomUUID();
    window.document = { name: '', path: null, edited: false };
    return { kind: 'kept', kept: { ...kept, fileChanged: false } };
  }
  if (document.path === null) return { kind: 'empty' };
  const read = await readStationFile(document.path);
  return 'error' in read ? { kind: 'problem', ...read } : { kind: 'file', file: read };
}

const isTaken = (id: string): boolean => allWindows().some(({ keptId }) => keptId === id);

async function isInItsFile({ about, text }: KeptFile): Promise<boolean> {
  if (!about?.path) return false;
  const read = await readStationFile(about.path);
  return 'text' in read && read.text === text;
}

async function hasFileChanged({ about }: KeptFile): Promise<boolean> {
  if (!about?.path || !about.stamp) return false;
  const now = await fileStamp(about.path).catch(() => null);
  return now !== null && JSON.stringify(now) !== JSON.stringify(about.stamp);
}
