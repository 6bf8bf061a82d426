import { cablesAt, kindOf, settingsIn } from '../../../station/parts.ts';
import type { Hookup, Station } from '../../../station/schema/schema.ts';

/** How the switches of the units in use stand in a hook-up, `Antenna switch, position, at “beam”`; only what differs from another one. */
export function switchWords(station: Station, hookup: Hookup, from?: Hookup): string[] {
  return station.units.flatMap((unit) => {
    if (cablesAt(station, hookup, unit.id).length === 0) return [];
    const kind = kindOf(station, unit);
    const [now, before] = [settingsIn(kind, unit, hookup), from && settingsIn(kind, unit, from)];
    return (kind.settings ?? []).flatMap(({ id, label, options }) => {
      if (before?.[id] === now[id]) return [];
      const option = options.find((one) => one.id === now[id])?.label ?? now[id];
      return [`${unit.name}, ${label}, at “${option}”`];
    });
  });
}
