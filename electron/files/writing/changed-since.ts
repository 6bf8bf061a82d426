import { setTimeout as pause } from 'node:timers/promises';
import type { FileChanged, FileStamp } from '../../../renderer/shell/bridge.ts';
import { fileStamp } from '../file-stamp.ts';
import { readStationFile } from '../read-station-file.ts';

const mostLooks = 20;

/** What is in the file if somebody has written to it since it had this stamp; null if nobody has, or nobody can tell. */
export async function changedSince(file: string, stamp: FileStamp): Promise<FileChanged | null> {
  try {
    const now = await fileStamp(file);
    return isSameStamp(now, stamp) ? null : await readSettled(file, now, mostLooks);
  } catch (error) {
    const isGone = error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR');
    return isGone ? { changed: null, text: null } : null;
  }
}

const isSameStamp = (one: FileStamp, other: FileStamp): boolean =>
  one.modifiedMs === other.modifiedMs && one.size === other.size && one.inode === other.inode;

/** Not the half that is there while somebody is still writing: what is in it once its stamp has rested a moment. */
async function readSettled(file: string, before: FileStamp, looks: number): Promise<FileChanged> {
  await pause(50);
  const read = await readStationFile(file);
  const now = await fileStamp(file);
  if (looks > 0 && !isSameStamp(before, now)) return readSettled(file, now, looks - 1);
  return { changed: now, text: 'text' in read ? read.text : null };
}
