import path from 'node:path';
import type { Problem, SavedFile } from '../../renderer/shell/bridge.ts';
import { fileStamp } from './file-stamp.ts';
import { plainReason } from './plain-reason.ts';
import { writeAtomically } from './write-atomically.ts';

/** Writes all of it, or nothing and a sentence that says why. */
export async function writeFile(file: string, content: string | Uint8Array): Promise<SavedFile | Problem> {
  const name = path.basename(file);
  try {
    await writeAtomically(file, content);
    return { path: file, name, stamp: await fileStamp(file) };
  } catch (error) {
    return { error: `${name} could not be saved: ${plainReason(error)}. What was there before is as it was.` };
  }
}
