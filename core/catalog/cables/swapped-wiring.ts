import type { Cable, Station } from '../../station/schema/schema.ts';
import { wiringOf } from './wiring-of.ts';

/** The two cores of a lead with plus and minus changed over at its end b; null where it has not both. */
export function swappedWiring(station: Station, cable: Cable): NonNullable<Cable['wiring']> | null {
  const rows = wiringOf(station, cable);
  const [live, back] = [rows.find((r) => r.role === 'live'), rows.find((r) => r.role === 'return')];
  if (!live || !back) return null;
  return [
    { a: live.a, b: back.b },
    { a: back.a, b: live.b },
  ];
}
