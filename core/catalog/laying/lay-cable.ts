import { limits } from '../../quantity/limits.ts';
import { type Change, edit } from '../../station/edit.ts';
import { firstFree } from '../../station/first-free.ts';
import { kindOf, portOf } from '../../station/parts.ts';
import { plugOf } from '../../station/plug-of.ts';
import type { CableKind } from '../../station/schema/cable-kind.ts';
import type { Cable, CableEnd, PortRef, Station, Unit } from '../../station/schema/schema.ts';
import type { PortClass } from '../../station/schema/unit-kind.ts';
import { cableKinds, type ShelfCable } from '../cables/cable-kinds.ts';
import { wiringOf } from '../cables/wiring-of.ts';
import { connectors as catalogue } from '../connectors.ts';
import { fitOf } from '../fit.ts';
import { usualDrop, wireLimitAmps, wireOhmsPerM } from '../wire/wire.ts';
import { connectorsById } from './place-unit.ts';
import { mostAmps, plusContact } from './port-use.ts';

/** What the number of a cable begins with, by class. */
export const classLetters: Record<PortClass, string> = {
  dc: 'D',
  rf: 'R',
  control: 'K',
  audio: 'A',
  data: 'C',
  earth: 'E',
};

/**
 * The change that lays a cable between two ports: the kind that its class and current need, the plugs that the ports
 * take, the next free number of its class (D1, R1, K1, A1, C1, E1), power wired plus to plus. Its length is by the
 * drawing's scale; without one 0.6 m, or 6 m where an outdoor antenna hangs on it. With a hook-up it is in that one
 * only. The document gets the cable kind and the plugs.
 */
export function layCable(station: Station, a: PortRef, b: PortRef, hookup?: string): Change {
  const from = portOf(station, a);
  const to = portOf(station, b);
  const letter = classLetters[from.port.class];
  const number = firstFree((n) => station.cables.some((c) => c.number === `${letter}${n}` || c.id === idOf(letter, n)));
  const lengthM = usualLengthM(station, [from.unit, to.unit]);
  const usual = usualCable(station, a, b, lengthM);
  const plugs = plugsFor(usual.kind, from.connector.gender, to.connector.gender);
  const cable: Cable = {
    id: idOf(letter, number),
    number: `${letter}${number}`,
    kind: usual.id,
    lengthM,
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
  const wiring =
    from.port.class === 'dc'
      ? polarityWiring(edit(station, { type: 'addCables', cables: [], carried }), cable)
      : undefined;
  return { type: 'addCables', cables: [wiring ? { ...cable, wiring } : cable], carried };
}

/** By the drawing's scale, with a fifth to spare; else 6 m to something outdoors and 0.6 m on the desk. */
function usualLengthM(station: Station, [a, b]: [Unit, Unit]): number {
  const { metresPerUnit } = station.settings;
  if (metresPerUnit === undefined) return [a, b].some((unit) => kindOf(station, unit).outdoor) ? 6 : 0.6;
  const apart = Math.abs(a.position.x - b.position.x) + Math.abs(a.position.y - b.position.y);
  const lengthM = Math.ceil(apart * metresPerUnit * 1.2 * 10) / 10;
  return Math.min(limits.metres.most, Math.max(shortestM, lengthM));
}

const shortestM = 0.3;

const idOf = (letter: string, n: number): string => `${letter.toLowerCase()}${n}`;

/** An extension lead lies with its socket at the port that is itself a plug. */
function plugsFor(kind: CableKind, genderA: string, genderB: string): { a: string; b: string } | undefined {
  if (!kind.plugs || genderA !== 'plug' || genderB === 'plug') return undefined;
  return { a: kind.plugs.b, b: kind.plugs.a };
}

function usualCable(station: Station, a: PortRef, b: PortRef, lengthM: number): ShelfCable {
  const ends = [portOf(station, a), portOf(station, b)];
  const [first] = ends;
  if (!first) return cableOf('lead-awg-18');
  const two = ends.some(({ connector }) => connector.contacts.length === 3);
  const most = Math.max(...ends.map(({ connector }) => connector.contacts.length));
  const many = most > 4;
  switch (first.port.class) {
    case 'dc':
      return leadFor(Math.max(ampsAt(station, a), ampsAt(station, b)), lengthM, station.settings);
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

/** The most that flows at a port, amperes. */
function ampsAt(station: Station, ref: PortRef): number {
  return mostAmps(kindOf(station, portOf(station, ref).unit), ref.port);
}

/** The thinnest gauge from 18 AWG that carries this with a quarter to spare and drops no more than is wanted; the thickest one beyond. */
function leadFor(amps: number, lengthM: number, settings: Station['settings']): ShelfCable {
  const gauges = [18, 16, 14, 12, 10];
  const mostDropV = (settings.maxDrop ?? usualDrop) * nominalVolts;
  const enough = gauges.find(
    (awg) =>
      (wireLimitAmps({ awg }, settings)?.amps ?? 0) >= 1.25 * amps &&
      2 * lengthM * wireOhmsPerM({ awg }, settings.ambientCelsius) * amps <= mostDropV,
  );
  return cableOf(`lead-awg-${enough ?? 10}`);
}

/** A 12 V station's voltage. */
const nominalVolts = 12;

/** Plus to plus, where contact to contact would join plus to minus; undefined where it is right by itself. */
function polarityWiring(station: Station, cable: Cable): Cable['wiring'] {
  const [a, b] = [plusOfPlug(station, cable, 'a'), plusOfPlug(station, cable, 'b')];
  const rows = wiringOf(station, cable);
  const [first, second] = rows;
  if (!a || !b || !first || !second || rows.length !== 2) return undefined;
  const fromPlus = first.a === a ? first : second;
  if (fromPlus.a !== a || fromPlus.b === b) return undefined;
  return [
    { a: first.a, b: second.b },
    { a: second.a, b: first.b },
  ];
}

/** The contact of a cable's plug that lies on the plus of the port it is in. */
function plusOfPlug(station: Station, cable: Cable, end: CableEnd): string | undefined {
  const { unit, port, connector } = portOf(station, cable[end]);
  const plug = plugOf(station, cable, end);
  const plus = plusContact(kindOf(station, unit), port, connector);
  return plug && fitOf(station.connectors, plug.id, port.connector).joins.find(([, jack]) => jack === plus)?.[0];
}

/** The extension lead for a unit that has a plug on its own lead, as phones have. */
function extensionFor(ends: readonly ReturnType<typeof portOf>[]): ShelfCable | undefined {
  const plugged = ends.find(({ connector }) => connector.gender === 'plug');
  return plugged && cableKinds.find(({ kind }) => kind.plugs?.a === plugged.port.connector);
}
