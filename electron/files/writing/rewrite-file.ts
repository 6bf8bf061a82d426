import type { Stats } from 'node:fs';
import { chmod, type FileHandle, open } from 'node:fs/promises';

/** The file may hold a part of the new and a part of the old content. */
export class TornFile extends Error {}

/**
 * Writes over the old content where it is, so that links, owner and attributes stay. A write that fails puts the old
 * content back; where even that fails, it throws a `TornFile`. Only with a backup somewhere else: a power cut half way
 * tears the file.
 */
export async function rewriteFile(target: string, content: string | Uint8Array, old: Stats): Promise<void> {
  const isLocked = (old.mode & 0o200) === 0;
  if (isLocked) await chmod(target, old.mode | 0o200);
  try {
    const handle = await open(target, 'r+');
    try {
      await overwrite(handle, Buffer.from(content));
    } finally {
      await handle.close();
    }
  } finally {
    if (isLocked) await chmod(target, old.mode);
  }
}

async function overwrite(handle: FileHandle, fresh: Buffer): Promise<void> {
  const before = await handle.readFile();
  try {
    await writeWhole(handle, fresh);
  } catch (error) {
    await writeWhole(handle, before).catch(() => {
      throw new TornFile('torn', { cause: error });
    });
    throw error;
  }
}

async function writeWhole(handle: FileHandle, bytes: Buffer): Promise<void> {
  for (let done = 0; done < bytes.length; ) {
    const { bytesWritten } = await handle.write(bytes, done, bytes.length - done, done);
    done += bytesWritten;
  }
  await handle.truncate(bytes.length);
  await handle.sync();
}
