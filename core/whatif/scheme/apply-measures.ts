import type { Change } from '../../station/edit.ts';
import { findUnit } from '../../station/parts.ts';
import type { Station, Unit } from '../../station/schema/schema.ts';
import type { Measure } from './measure.ts';
import { ringsWith } from './ring-measure.ts';

/** Some measures of a scheme as one edit: all rings of a unit together. */
export function applyMeasures(station: Station, measures: readonly Measure[]): Change {
  const rings = new Map<string, Unit['rings']>();
  for (const { ports, colour } of measures) {
    const { unit } = ports[0];
    const now = rings.has(unit) ? rings.get(unit) : findUnit(station, unit)?.rings;
    rings.set(unit, ringsWith(now, ports, colour));
  }
  const changes = [...rings].map(([id, own]): Change => {
    const set = { rings: own } as Partial<Omit<Unit, 'id'>>;
    return { type: 'updateUnit', id, set };
  });
  return { type: 'all', name: 'Rings on plugs and jacks', changes };
}
