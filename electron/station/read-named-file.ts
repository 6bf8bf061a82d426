import { createReadStream, existsSync } from 'node:fs';
import path from 'node:path';
import type { Readable } from 'node:stream';
import { readStation } from '../../core/index.ts';
import { plainReason } from '../files/plain-reason.ts';
import { decodeText, mostReadBytes } from '../files/read-station-file.ts';
import type { Outside } from './outside.ts';

type Opened = ReturnType<typeof readStation>;

/** What a station file holds, or every problem in it. `hut` alone means the sample of that name, `-` standard input. */
export async function readNamedFile(name: string, outside: Pick<Outside, 'input' | 'say'>): Promise<Opened> {
  if (name === '-') {
    const input = outside.input();
    if (input.isTTY) outside.say('Reading a station from the keyboard: Ctrl-D on a line of its own ends it.');
    return stationFrom(input, 'standard input');
  }
  const file = existsSync(name) ? name : sampleFile(name);
  if (file === null) return { problems: [{ place: name, message: 'There is no such file.' }] };
  return stationFrom(createReadStream(file), name);
}

/** A stream, as a pipe is read like a file, and one without end like one that is too large. */
async function stationFrom(stream: Readable, place: string): Promise<Opened> {
  const problem = (message: string): Opened => ({ problems: [{ place, message }] });
  let bytes: Buffer | null;
  try {
    bytes = await bytesOf(stream);
  } catch (error) {
    return problem(`It can’t be read: ${plainReason(error)}.`);
  }
  if (bytes === null) return problem(`It is larger than ${mostReadBytes / 1_000_000} MB; no station comes near that.`);
  if (bytes.length === 0) return problem('There is nothing in it.');
  const text = decodeText(bytes);
  return text === null ? problem('It holds something other than text.') : readStation(text);
}

/** All that a stream brings; null where that is more than a station can be. */
async function bytesOf(stream: Readable): Promise<Buffer | null> {
  const chunks: Buffer[] = [];
  let bytes = 0;
  for await (const chunk of stream) {
    chunks.push(chunk);
    bytes += chunk.length;
    if (bytes > mostReadBytes) return null;
  }
  return Buffer.concat(chunks);
}

function sampleFile(name: string): string | null {
  if (!/^[\w-]+$/.test(name)) return null;
  const file = path.join(import.meta.dirname, '../../core/samples', `${name}.station.json`);
  return existsSync(file) ? file : null;
}
