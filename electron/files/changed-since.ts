import { stat } from 'node:fs/promises';
import type { FileChanged, FileStamp } from '../../renderer/shell/bridge.ts';
import { stampOf } from './file-stamp.ts';
import { readStationFile } from './read-station-file.ts';

/** What is in the file if somebody has written to it since it had this stamp; null if nobody has, or nobody can tell. */
export async function changedSince(file: string, stamp: FileStamp): Promise<FileChanged | null> {
  try {
    const now = stampOf(await stat(file));
    if (now.modifiedMs === stamp.modifiedMs && now.size === stamp.size && now.inode === stamp.inode) return null;
    const read = await readStationFile(file);
    return 'text' in read ? { changed: read.stamp, text: read.text } : { changed: now, text: null };
  } catch (error) {
    const isGone = error instanceof Error && 'code' in error && (error.code === 'ENOENT' || error.code === 'ENOTDIR');
    return isGone ? { changed: null, text: null } : null;
  }
}
