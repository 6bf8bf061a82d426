import { stat } from 'node:fs/promises';
import { isWritable } from './replace-file.ts';

/** Whether a file that is there is marked as not to be written to, or may not be by this user. */
export async function isReadOnly(file: string): Promise<boolean> {
  const about = await stat(file).catch(() => null);
  if (!about?.isFile()) return false;
  // The system lets some users write to anything; the mark still says what its owner wants.
  return (about.mode & 0o222) === 0 || !(await isWritable(file));
}
