import { execFile } from 'node:child_process';
import { stat } from 'node:fs/promises';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** Node has no way to extended attributes and access lists; the system's own copying program has. */
const copying: Partial<Record<NodeJS.Platform, readonly string[]>> = {
  linux: ['--attributes-only', '--preserve=mode,ownership,xattr', '--'],
  // Copies the content as well, which is then written over.
  darwin: ['-p', '--'],
};

/**
 * Gives a new file the old one's mode, owner, access list and extended attributes: true if it has them all now.
 * On Windows there is nothing to do: a file there has what its folder gives to every file in it.
 */
export async function copyAttributes(from: string, to: string): Promise<boolean> {
  const options = copying[process.platform];
  if (!options) return process.platform === 'win32';
  try {
    await run('cp', [...options, from, to]);
  } catch {
    return false;
  }
  // Not being allowed to give a file away is no error to `cp`.
  const [old, fresh] = await Promise.all([stat(from), stat(to)]);
  return old.uid === fresh.uid && old.gid === fresh.gid && old.mode === fresh.mode;
}
