import { readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import type { NotDone, OpenedFile } from '../../renderer/shell/bridge.ts';
import { stampOf } from './file-stamp.ts';
import { plainReason } from './plain-reason.ts';

/** No more is read from a disk; what is less and still too large for a station, its reader says. */
export const mostReadBytes = 50_000_000;

/** The file's text, or a sentence that says why it can't be had. Whether it is a station is for the screen to say. */
export async function readStationFile(file: string): Promise<OpenedFile | NotDone> {
  const name = path.basename(file);
  try {
    const about = await stat(file);
    if (!about.isFile()) return { error: `${name} is not a file.` };
    if (about.size > mostReadBytes) return { error: tooLarge(name, about.size) };
    const text = decodeText(await readFile(file));
    return text === null
      ? { error: `${name} is not a station file: it holds something other than text.` }
      : { path: file, name, text, stamp: stampOf(about) };
  } catch (error) {
    return { error: `${name} could not be opened: ${plainReason(error)}.` };
  }
}

export function decodeText(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function tooLarge(name: string, bytes: number): string {
  const megabytes = (size: number) => `${Math.round(size / 1_000_000)} MB`;
  return `${name} is not a station file: it has ${megabytes(bytes)}, and no station comes near ${megabytes(mostReadBytes)}.`;
}
