import { realPath } from '../same-file.ts';
import { replaceFile } from './replace-file.ts';

/** Writes a file of the program's own, whose mode and owner are the system's usual: all of it or, throwing, nothing. */
export async function writeAtomically(file: string, content: string | Uint8Array): Promise<void> {
  await replaceFile(realPath(file), content, null);
}
