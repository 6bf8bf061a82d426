import path from 'node:path';

/** What a file system allows for one name: bytes on most, half as many letters at worst on Windows. */
const mostBytes = 255;

/** The name cut so that a file can have it, with its ending whole: `.station.json`, `.pdf`. */
export function fitName(name: string): string {
  const ending = /(\.[a-z]+)?\.[a-z0-9]+$/i.exec(name)?.[0] ?? '';
  const kept = Buffer.byteLength(ending) < mostBytes / 2 ? ending : '';
  return cutToBytes(name.slice(0, name.length - kept.length), mostBytes - Buffer.byteLength(kept)) + kept;
}

/** Whether the last part of the path is short enough for a file. */
export const isFittingName = (file: string): boolean => Buffer.byteLength(path.basename(file)) <= mostBytes;

function cutToBytes(text: string, bytes: number): string {
  if (Buffer.byteLength(text) <= bytes) return text;
  let cut = '';
  let used = 0;
  // By whole characters: half a one is no text.
  for (const letter of text) {
    used += Buffer.byteLength(letter);
    if (used > bytes) break;
    cut += letter;
  }
  return cut.trimEnd();
}
