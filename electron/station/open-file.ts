import { existsSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { readStation } from '../../core/index.ts';

/** What a station file holds, or every problem in it. `hut` alone means the sample of that name. */
export function openFile(name: string): ReturnType<typeof readStation> {
  const file = existsSync(name) ? name : sampleFile(name);
  if (file === null) return { problems: [{ place: name, message: 'There is no such file.' }] };
  try {
    // Far more than a station can be; a slip of the hand must not fill the memory.
    if (statSync(file).size > 200_000_000)
      return { problems: [{ place: name, message: 'The file is larger than 200 MB; it is no station.' }] };
    return readStation(readFileSync(file, 'utf8'));
  } catch (error) {
    return { problems: [{ place: name, message: `The file can’t be read: ${reasonOf(error)}.` }] };
  }
}

function sampleFile(name: string): string | null {
  if (!/^[\w-]+$/.test(name)) return null;
  const file = path.join(import.meta.dirname, '../../core/samples', `${name}.station.json`);
  return existsSync(file) ? file : null;
}

const reasons: Record<string, string> = {
  EISDIR: 'it is a folder',
  EACCES: 'you may not read it',
  ENOENT: 'it is not there',
};

function reasonOf(error: unknown): string {
  const { code = '', message = '' } = error as { code?: string; message?: string };
  return reasons[code] ?? message;
}
