import { edit } from '../../../station/edit.ts';
import { findCable } from '../../../station/parts.ts';
import type { Place } from '../../../station/place.ts';
import type { Station } from '../../../station/schema/schema.ts';
import { listActs } from '../../../whatif/acts/list-acts.ts';
import { type Setup, seenIn } from '../setup.ts';
import type { Suspect } from './suspect.ts';

/** What a hand may have plugged otherwise than it is drawn: two plugs exchanged, one in another jack, where a step reads. */
export function actSuspects(setup: Setup, places: readonly Place[]): Suspect[] {
  const cables = cablesAt(setup.station, places);
  return listActs(setup.station, { cables, units: new Set() })
    .filter(({ kind }) => kind === 'exchanged' || kind === 'moved')
    .flatMap((act): Suspect[] => {
      const [cable] = act.cables;
      if (cable === undefined) return [];
      return [
        {
          id: `act:${act.id}`,
          text: act.words,
          at: { cable },
          rank: 1,
          see: (other) =>
            act.cables.every((id) => findCable(other.station, id))
              ? seenIn({ ...other, station: edit(other.station, act.change) })
              : null,
        },
      ];
    });
}

/** The leads that places name, and those at the units that they name. */
function cablesAt(station: Station, places: readonly Place[]): Set<string> {
  const units = new Set(places.flatMap((place) => ('unit' in place ? [place.unit] : [])));
  const named = places.flatMap((place) => ('cable' in place ? [place.cable] : []));
  const there = station.cables.filter(({ a, b }) => units.has(a.unit) || units.has(b.unit));
  return new Set([...named, ...there.map(({ id }) => id)]);
}
