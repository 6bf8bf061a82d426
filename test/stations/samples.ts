import { readFileSync } from 'node:fs';
import path from 'node:path';
import { readStation } from '../../core/station/file/read.ts';
import type { Station } from '../../core/station/schema/schema.ts';

/** The text of a sample as it ships. */
export const sampleText = (name: string): string =>
  readFileSync(path.join(import.meta.dirname, '../../core/samples', `${name}.station.json`), 'utf8');

/** A sample that ships with the app. */
export function sample(name: string): Station {
  const read = readStation(sampleText(name));
  if ('problems' in read) throw new Error(read.problems.map((p) => `${p.place}: ${p.message}`).join('\n'));
  return read.station;
}
