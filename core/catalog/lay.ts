import type { CableKind } from '../station/cable-kind.ts';
import type { Change } from '../station/edit.ts';
import { firstFree } from '../station/first-free.ts';
import { kindOf, portOf } from '../station/parts.ts';
import type { Cable, PortRef, Station } from '../station/schema.ts';
import type { PortClass } from '../station/unit-kind.ts';
import { cableKinds, type ShelfCable } from './cable-kinds.ts';
import { connectors as catalogue } from './connectors.ts';
import type { Surroundings } from './derating.ts';
import { connectorsById } from './place.ts';
import { wireLimitAmps } from './wire.ts';

const letters: Record<PortClass, string> = { dc: 'D', rf: 'R', control: 'K', audio: 'A', data: 'C', earth: 'E' };

/**
 * The change that lays a cable between two ports: the usual kind of its class, the plugs that the ports take, the
 * next free number of its class (D1, R1, K1, A1, C1, E1). 0.6 m long, 6 m where an outdoor antenna hangs on it. With
 * a hook-up it is in that one only. The document gets the cable kind and the plugs.
 */
export function layCable(station: Station, a: PortRef, b: PortRef, hookup?: string): Change {
  const from = portOf(station, a);
  const to = portOf(station, b);
  const letter = letters[from.port.class];
  const number = firstFree((n) => station.cables.some((c) => c.number === `${letter}${n}` || c.id === idOf(letter, n)));
  const usual = usualCable(station, a, b);
  const plugs = plugsFor(usual.kind, from.connector.gender, to.connector.gender);
  const outdoor = [from.unit, to.unit].some((unit) => kindOf(station, unit).outdoor);
  const cable: Cable = {
    id: idOf(letter, number),
    number: `${letter}${number}`,
    kind: usual.id,
    lengthM: outdoor ? 6 : 0.6,
    a,
    b,
    ...(plugs && { plugs }),
    ...(hookup !== undefined && { hookups: [hookup] }),
  };
  const ends = [from.port.connector, to.port.connector];
  const own = [plugs?.a ?? usual.kind.plugs?.a, plugs?.b ?? usual.kind.plugs?.b];
  const mates = ends.map((id, i) => own[i] ?? (station.connectors[id] ?? catalogue[id])?.mates[0]);
  const carried = {
    cableKinds: { [usual.id]: usual.kind },
    connectors: connectorsById([...ends, ...mates.filter((id) => id !== undefined)]),
  };
  return { type: 'addCables', cables: [cable], carried };
}

const idOf = (letter: string, n: number): string => `${letter.toLowerCase()}${n}`;

/** An extension lead lies with its socket at the port that is itself a plug. */
function plugsFor(kind: CableKind, genderA: string, genderB: string): { a: string; b: string } | undefined {
  if (!kind.plugs || genderA !== 'plug' || genderB === 'plug') return undefined;
  return { a: kind.plugs.b, b: kind.plugs.a };
}

function usualCable(station: Station, a: PortRef, b: PortRef): ShelfCable {
  const ends = [portOf(station, a), portOf(station, b)];
  const [first] = ends;
  if (!first) return cableOf('lead-awg-18');
  const two = ends.some(({ connector }) => connector.contacts.length === 3);
  const most = Math.max(...ends.map(({ connector }) => connector.contacts.length));
  const many = most > 4;
  switch (first.port.class) {
    case 'dc':
      return leadFor(Math.max(ampsAt(station, a), ampsAt(station, b)), station.settings);
    case 'rf':
      return cableOf('coax-rg-58');
    case 'control':
      if (most > 8) return cableOf('control-lead-25');
      return cableOf(many ? 'control-lead-8' : two ? 'paddle-lead' : 'key-lead');
    case 'audio':
      return extensionFor(ends) ?? cableOf(two ? 'stereo-lead' : 'audio-lead');
    case 'data':
      if (most > 8) return cableOf(most > 9 ? 'data-lead-25' : 'data-lead-9');
      return cableOf(many ? 'network-lead' : 'usb-lead');
    case 'earth':
      return cableOf('earth-wire');
  }
}

function cableOf(id: string): ShelfCable {
  const found = cableKinds.find((cable) => cable.id === id);
  if (!found) throw new Error(`no cable kind ${id}`);
  return found;
}

/** The most that the loads of a port draw, amperes. */
function ampsAt(station: Station, ref: PortRef): number {
  const kind = kindOf(station, portOf(station, ref).unit);
  const draws = kind.elements.flatMap((element) => {
    if (element.type !== 'load' || element.law !== 'current') return [];
    if (!element.plus.startsWith(`${ref.port}.`)) return [];
    return [element.amount, ...(element.states ?? []).map((state) => state.amount)];
  });
  const gives = kind.elements.flatMap((e) =>
    e.type === 'supply' && e.plus.startsWith(`${ref.port}.`) ? [e.amps] : [],
  );
  return Math.max(0, ...draws, ...gives);
}

/** The thinnest gauge from 18 AWG that carries this with a quarter to spare; the thickest one beyond. */
function leadFor(amps: number, around: Surroundings): ShelfCable {
  const gauges = [18, 16, 14, 12, 10];
  const enough = gauges.find((awg) => (wireLimitAmps({ awg }, around)?.amps ?? 0) >= 1.25 * amps);
  return cableOf(`lead-awg-${enough ?? 10}`);
}

/** The extension lead for a unit that has a plug on its own lead, as phones have. */
function extensionFor(ends: readonly ReturnType<typeof portOf>[]): ShelfCable | undefined {
  const plugged = ends.find(({ connector }) => connector.gender === 'plug');
  return plugged && cableKinds.find(({ kind }) => kind.plugs?.a === plugged.port.connector);
}
