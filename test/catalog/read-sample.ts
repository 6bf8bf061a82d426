import { readFileSync } from 'node:fs';
import path from 'node:path';
import { readStation } from '../../core/station/file/read.ts';
import type { Station } from '../../core/station/schema/schema.ts';

/** The text of a sample as it ships. */
export const sampleText = (name: string): string =>
  readFileSync(path.join(import.meta.dirname, `../../core/samples/${name}.station.json`), 'utf8');

/** A sample as a station. Throws with its problems where it has any. */
export function readSample(name: string): Station {
  const result = readStation(sampleText(name));
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return result.station;
}
