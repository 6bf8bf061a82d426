import { asPeopleCount } from '../../quantity/as-people-count.ts';
import type { Change } from '../../station/edit.ts';
import { portName, unitOf } from '../../station/parts.ts';
import { ringName } from '../../station/ring-colours.ts';
import type { RingColour } from '../../station/schema/ring-colour.ts';
import type { Station, Unit } from '../../station/schema/schema.ts';
import type { MixUp } from '../acts/mix-up.ts';
import { cableEnds, isSamePort } from '../acts/plug-in-jack.ts';
import type { Jacks } from './conflicts.ts';
import type { Measure } from './measure.ts';

/** A ring of a colour at alike jacks and on the plugs in them, or none any more. */
export function ringMeasure(
  station: Station,
  ports: Jacks,
  colour: RingColour | null,
  prevents: readonly MixUp[],
): Measure {
  const [{ unit, port }] = ports;
  return {
    id: `ring ${unit}.${port} ${colour ?? 'none'}`,
    kind: 'ring',
    colour,
    ports,
    change: applied(station, ports, colour),
    words: wordsFor(station, ports, colour),
    prevents,
  };
}

function applied(station: Station, ports: Jacks, colour: RingColour | null): Change {
  const { id, rings } = unitOf(station, ports[0].unit);
  const set = { rings: ringsWith(rings, ports, colour) } as Partial<Omit<Unit, 'id'>>;
  return { type: 'updateUnit', id, set };
}

/** The rings of a unit with those of some ports of another colour; undefined where none is left. */
export function ringsWith(rings: Unit['rings'], ports: Jacks, colour: RingColour | null): Unit['rings'] {
  const others = Object.entries(rings ?? {}).filter(([id]) => !ports.some(({ port }) => port === id));
  const ringed = colour === null ? [] : ports.map(({ port }): [string, RingColour] => [port, colour]);
  const all = [...others, ...ringed];
  return all.length > 0 ? Object.fromEntries(all) : undefined;
}

function wordsFor(station: Station, ports: Jacks, colour: RingColour | null): string {
  const [first, ...more] = ports;
  const jacks =
    more.length > 0 ? `${portName(station, first)} and ${more.length} more like it` : portName(station, first);
  const plugs = station.cables
    .filter((cable) => cableEnds.some((end) => ports.some((port) => isSamePort(cable[end], port))))
    .map(({ number }) => number)
    .sort(asPeopleCount);
  const one = colour === null ? 'No ring any more' : `Ring ${ringName(colour)}`;
  if (plugs.length === 0) return `${one} at ${jacks}`;
  return `${one} at ${jacks}, and on the ${plugs.length === 1 ? 'plug' : 'plugs'} of ${plugs.join(', ')}`;
}
