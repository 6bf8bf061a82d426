import { readStation } from '../../../core/station/file/read-station.ts';
import { writeStation } from '../../../core/station/file/write-station.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { generateStation } from '../../stations/generate.ts';

/** A generated station with just so many units and cables, the last ones left away; an error where there are too few. */
export function trimmedStation(units: number, cables: number): Station {
  const whole = [0, 7, 13].map((more) => generateStation(units + more)).find((s) => s.units.length >= units);
  if (!whole) throw new Error(`no station of ${units} units was made`);
  const kept = whole.units.slice(0, units);
  const ids = new Set(kept.map((u) => u.id));
  const laid = whole.cables.filter((c) => ids.has(c.a.unit) && ids.has(c.b.unit)).slice(0, cables);
  const station = { ...whole, title: `Generated, ${units} units`, units: kept, cables: laid };
  if (laid.length < cables) throw new Error(`${units} units have ${laid.length} cables, not ${cables}`);
  const read = readStation(writeStation(station));
  if ('problems' in read) throw new Error(read.problems.map((p) => `${p.place}: ${p.message}`).join('\n'));
  return read.station;
}

/** The unit with most cables, of those the one nearest to the middle of all. */
export function busiestUnit({ units, cables }: Station): string {
  const cablesOf = (id: string) => cables.filter((c) => c.a.unit === id || c.b.unit === id).length;
  const middle = {
    x: units.reduce((sum, u) => sum + u.position.x, 0) / units.length,
    y: units.reduce((sum, u) => sum + u.position.y, 0) / units.length,
  };
  const ranked = units
    .map(({ id, position }) => ({
      id,
      cables: cablesOf(id),
      away: Math.hypot(position.x - middle.x, position.y - middle.y),
    }))
    .sort((a, b) => b.cables - a.cables || a.away - b.away);
  const [first] = ranked;
  if (!first) throw new Error('a station without units has nothing to drag');
  return first.id;
}
