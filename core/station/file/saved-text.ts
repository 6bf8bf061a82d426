import type { Station } from '../schema/schema.ts';
import type { Problem } from './problem.ts';
import { readStation } from './read-station.ts';
import { writeStation } from './write-station.ts';

/**
 * The text of a station's file, once the reader has taken it back and made the same of it; or what would keep it from
 * being opened again, before anything in a file has given way to it.
 */
export function savedText(station: Station): { text: string } | { problems: Problem[] } {
  const text = writeStation(station);
  const read = readStation(text);
  if ('problems' in read) return read;
  if (writeStation(read.station) === text) return { text };
  return { problems: [{ place: 'file', message: 'It would not be the same when it is opened again.' }] };
}
