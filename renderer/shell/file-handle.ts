import type { FileChanged, FileStamp } from './bridge.ts';

/** The part of the File System Access standard that is used; not every browser has it. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{
    write(text: string): Promise<void>;
    close(): Promise<void>;
    abort(): Promise<void>;
  }>;
}

export const isHandle = (place: unknown): place is FileHandle =>
  typeof place === 'object' && place !== null && 'createWritable' in place;

/** A browser tells no more of a file than this. */
export const browserStamp = ({ lastModified, size }: File): FileStamp => ({
  modifiedMs: lastModified,
  size,
  inode: 0,
});

/** What is in the file if somebody has written to it since it had this stamp; null if not, or if the browser won't say. */
export async function changedSince(handle: FileHandle, stamp: FileStamp): Promise<FileChanged | null> {
  try {
    const file = await handle.getFile();
    if (file.lastModified === stamp.modifiedMs && file.size === stamp.size) return null;
    return { changed: browserStamp(file), text: await file.text() };
  } catch (error) {
    return error instanceof DOMException && error.name === 'NotFoundError' ? { changed: null, text: null } : null;
  }
}

/** Writes all of the text or, throwing, nothing; gives the file's stamp where the browser tells it. */
export async function writeTo(handle: FileHandle, text: string): Promise<{ readonly stamp?: FileStamp }> {
  const writable = await handle.createWritable();
  try {
    await writable.write(text);
    // The browser writes beside the file, and puts that in its place only now.
    await writable.close();
  } catch (error) {
    await writable.abort().catch(() => {});
    throw error;
  }
  return handle.getFile().then(
    (file) => ({ stamp: browserStamp(file) }),
    () => ({}),
  );
}
