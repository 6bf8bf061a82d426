import { cablesIn, kindOf, portName, settingsIn } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import type { Cable, Hookup, Station, Unit } from '../../station/schema/schema.ts';

/** One thing that is otherwise in one hook-up than in the other. */
export interface HookupDifference {
  /** `R4, Meter · antenna to Dummy load`; `Tuner, tuned for`. */
  readonly what: string;
  readonly at: readonly Place[];
  /** How it is in the one and in the other: `plugged in`, `not`, or the name of a setting's option. */
  readonly one: string;
  readonly other: string;
}

/** What is plugged differently in two hook-ups and which settings differ; cables first, in the document's order. */
export function compareHookups(station: Station, one: Hookup, other: Hookup): HookupDifference[] {
  const [inOne, inOther] = [new Set(cablesIn(station, one)), new Set(cablesIn(station, other))];
  const cables = station.cables
    .filter((cable) => inOne.has(cable) !== inOther.has(cable))
    .map((cable) => ({
      what: cableName(station, cable),
      at: [{ cable: cable.id }],
      one: inOne.has(cable) ? 'plugged in' : 'not',
      other: inOther.has(cable) ? 'plugged in' : 'not',
    }));
  return [...cables, ...station.units.flatMap((unit) => compareSettings(station, unit, one, other))];
}

const cableName = (station: Station, { number, a, b }: Cable): string =>
  `${number}, ${portName(station, a)} to ${portName(station, b)}`;

function compareSettings(station: Station, unit: Unit, one: Hookup, other: Hookup): HookupDifference[] {
  const kind = kindOf(station, unit);
  const [left, right] = [settingsIn(kind, unit, one), settingsIn(kind, unit, other)];
  return (kind.settings ?? []).flatMap((setting): HookupDifference[] => {
    const labelOf = (value: string | undefined) => setting.options.find((o) => o.id === value)?.label ?? value ?? '';
    if (left[setting.id] === right[setting.id]) return [];
    return [
      {
        what: `${unit.name}, ${setting.label}`,
        at: [{ unit: unit.id }],
        one: labelOf(left[setting.id]),
        other: labelOf(right[setting.id]),
      },
    ];
  });
}
