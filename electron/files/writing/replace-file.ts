import type { Stats } from 'node:fs';
import { access, constants, type FileHandle, open, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { copyAttributes } from './copy-attributes.ts';
import { sweepTemporaryFiles, temporaryFile } from './temporary-files.ts';

/**
 * Writes all of the content or, throwing, nothing: it goes to a new file beside the old one, onto the disk, and only
 * then takes the old one's name. A full disk or a power cut half way leaves the old file as it was. False, with nothing
 * done, where the old file would lose something by it and can be written to as it is: another name (a hard link), its
 * owner, attributes; or where its folder takes no new file.
 */
export async function replaceFile(target: string, content: string | Uint8Array, old: Stats | null): Promise<boolean> {
  const canBeRewritten = old !== null && (old.uid === process.getuid?.() || (await isWritable(target)));
  if (canBeRewritten && old.nlink > 1) return false;
  const folder = path.dirname(target);
  const fresh = temporaryFile(folder);
  const handle = await openFresh(fresh, old, canBeRewritten);
  if (!handle) return false;
  try {
    const isComplete = await write(handle, () => !old || copyAttributes(target, fresh), content);
    if (!isComplete && canBeRewritten) {
      await rm(fresh, { force: true });
      return false;
    }
    await rename(fresh, target);
  } catch (error) {
    await rm(fresh, { force: true });
    throw error;
  }
  await syncFolder(folder);
  await sweepTemporaryFiles(folder);
  return true;
}

export const isWritable = (file: string): Promise<boolean> =>
  access(file, constants.W_OK).then(
    () => true,
    () => false,
  );

/** Null where the folder takes no new file but the old one can be written to. */
async function openFresh(fresh: string, old: Stats | null, canBeRewritten: boolean): Promise<FileHandle | null> {
  try {
    // Nobody else's to read until it has the old one's mode.
    return await open(fresh, 'wx', old ? 0o600 : 0o666);
  } catch (error) {
    if (canBeRewritten && isRefusal(error)) return null;
    throw error;
  }
}

const isRefusal = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && ['EACCES', 'EPERM', 'EROFS'].includes(String(error.code));

async function write(handle: FileHandle, prepare: () => boolean | Promise<boolean>, content: string | Uint8Array) {
  try {
    const isComplete = await prepare();
    const bytes = Buffer.from(content);
    await handle.writeFile(bytes);
    await handle.truncate(bytes.length);
    await handle.sync();
    return isComplete;
  } finally {
    await handle.close();
  }
}

/** The new name too is to outlast a power cut; where a folder can't be synced, the system sees to it. */
async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => null);
  await handle?.sync().catch(() => {});
  await handle?.close();
}
