import { kindOf } from './parts.ts';
import { remember } from './remember.ts';
import type { PortRef, Station, Unit } from './schema/schema.ts';

/**
 * Units that stand outdoors: those of which the user says so, those of such a kind, and what comes before an amplifier out
 * there, on its antenna's side. What is in the soil does not count: its wire stays where it is.
 */
export const outdoorUnits = remember((station: Station): ReadonlySet<string> => {
  const isSaidToBe = (unit: Unit) =>
    unit.outdoor ?? (kindOf(station, unit).outdoor && !kindOf(station, unit).electrode);
  const outdoors = new Set(station.units.filter(isSaidToBe).map(({ id }) => id));
  for (const unit of station.units.filter(({ id }) => outdoors.has(id))) {
    for (const element of kindOf(station, unit).elements) {
      if (element.type !== 'rfPath' || element.lossDb >= 0) continue;
      const before = (end: PortRef) => end.unit === unit.id && end.port === element.a;
      for (const { a, b } of station.cables) {
        if (before(a)) outdoors.add(b.unit);
        if (before(b)) outdoors.add(a.unit);
      }
    }
  }
  for (const { id, outdoor } of station.units) if (outdoor === false) outdoors.delete(id);
  return outdoors;
});

export const isOutdoor = (station: Station, unit: string): boolean => outdoorUnits(station).has(unit);
