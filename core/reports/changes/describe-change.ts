import { type Change, edit } from '../../station/edit.ts';
import type { Station } from '../../station/schema/schema.ts';
import { cableLines } from './cable-lines.ts';
import { broughtAlong, describedAnew } from './carried-lines.ts';
import { type ChangeLine, isSame } from './change-line.ts';
import { paperLines } from './paper-lines.ts';
import { stationLines } from './station-lines.ts';
import { unitLines } from './unit-lines.ts';

export type { ChangeLine } from './change-line.ts';

/** What a change would do to a station, in words, before it is done. Empty only where it changes nothing. */
export function describeChange(station: Station, change: Change): readonly ChangeLine[] {
  return describeDifference(station, edit(station, change));
}

/** What makes one station another, in the same words. */
export function describeDifference(station: Station, after: Station): readonly ChangeLine[] {
  if (isSame(station, after)) return [];
  const lines = [
    ...unitLines(station, after),
    ...cableLines(station, after),
    ...stationLines(station, after),
    ...paperLines(station, after),
    ...describedAnew(station, after),
  ];
  if (lines.length > 0) return lines;
  // Descriptions that a unit or cable brings along go without saying; alone they are what is left to say.
  const brought = broughtAlong(station, after);
  return brought.length > 0 ? brought : [{ words: 'Only the order in the file changes', at: [] }];
}
