import { findCable } from '../../station/parts.ts';
import { ringAt } from '../../station/ring-at.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import type { Act } from './act.ts';

/** The jack that a plug belongs in, and the one that it comes into. */
export type JackPair = readonly [PortRef, PortRef];

/**
 * The jacks that an act takes for each other: it is prevented where those of one pair have different rings, as each
 * plug carries the ring of its jack. None for crossed cores and for switches, which no ring can tell.
 */
export function jackPairs(station: Station, act: Act): JackPair[] {
  const [one, two] = act.cables.map((id) => findCable(station, id));
  switch (act.kind) {
    case 'moved':
    case 'exchanged': {
      const [from, to] = act.at.flatMap((place): PortRef[] =>
        'unit' in place && place.port !== undefined ? [{ unit: place.unit, port: place.port }] : [],
      );
      return from && to ? [[from, to]] : [];
    }
    case 'turned':
      return one ? [[one.a, one.b]] : [];
    case 'mistaken':
      return one && two
        ? [
            [one.a, two.a],
            [one.b, two.b],
          ]
        : [];
    case 'crossed':
    case 'switched':
      return [];
  }
}

/** Whether rings at the jacks and on the plugs tell a hand that it is about to go wrong. */
export const isPrevented = (station: Station, act: Act): boolean =>
  jackPairs(station, act).some(([from, to]) => ringAt(station, from) !== ringAt(station, to));
