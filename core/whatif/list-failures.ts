import type { Circuit, CircuitActor, CircuitPart, Resistor } from '../circuit/circuit.ts';
import { classOf, findCable, unitOf } from '../station/parts.ts';
import type { Station } from '../station/schema/schema.ts';
import type { PortClass } from '../station/schema/unit-kind.ts';
import { contactAt } from '../trial/contact-at.ts';
import { fuseName } from '../trial/power/fuse-place.ts';
import type { Failure } from './failure.ts';

const nothing = { parts: [], alike: [], held: new Map(), volts: new Map() } as const;

/**
 * All that can fail one at a time in a hook-up's circuit: each core of each cable, with its plugs' contacts and its
 * fuse; each fuse in a unit; each unit's power; each relay, mute or keyed stage that sticks; each supply that goes to
 * the highest voltage of which it is capable.
 */
export function listFailures(station: Station, circuit: Circuit): Failure[] {
  return [
    ...coresOf(station, circuit),
    ...unitFuses(station, circuit),
    ...powerOf(station, circuit),
    ...sticking(station, circuit),
    ...highSupplies(station, circuit),
  ];
}

type CablePart = Resistor & { readonly origin: { readonly cable: string } };

const isOfCable = (part: CircuitPart): part is CablePart => part.kind === 'resistor' && 'cable' in part.origin;

/** The cores of all cables: parts in a row, with nothing between them, fail as one. */
function coresOf(station: Station, circuit: Circuit): Failure[] {
  const byCable = new Map<string, number[]>();
  circuit.parts.forEach((part, i) => {
    if (!isOfCable(part)) return;
    const list = byCable.get(part.origin.cable);
    if (list) list.push(i);
    else byCable.set(part.origin.cable, [i]);
  });
  return [...byCable].flatMap(([id, parts]) => {
    const cable = findCable(station, id);
    const words = roleWords[(cable && classOf(station, cable)) ?? 'control'] ?? plainWords;
    return rowsOf(circuit, parts).map((row): Failure => {
      const name = nameOfRow(circuit, row, words);
      const text = `${name.words} of ${cable?.number ?? id} ${name.verb}`;
      return {
        ...nothing,
        id: `open:cable ${id}.${name.id}`,
        kind: 'opens',
        text,
        at: { cable: id },
        parts: row.slice(0, 1),
        alike: row,
      };
    });
  });
}

/** Groups the parts of a cable that follow on one another at nodes where nothing branches off. */
function rowsOf(circuit: Circuit, own: readonly number[]): number[][] {
  const { parts } = circuit;
  const at = new Map<number, number[]>();
  for (const i of own) {
    const { a, b } = parts[i] as CablePart;
    for (const node of [a, b]) at.set(node, [...(at.get(node) ?? []), i]);
  }
  const rowOf = new Map(own.map((i) => [i, [i]]));
  for (const [node, here] of at) {
    const [one, two] = here;
    if (here.length !== 2 || one === undefined || two === undefined || !isInCable(circuit, node)) continue;
    const [row, other] = [rowOf.get(one) ?? [], rowOf.get(two) ?? []];
    if (row === other) continue;
    row.push(...other);
    for (const i of other) rowOf.set(i, row);
  }
  return [...new Set(rowOf.values())].map((row) => row.sort((a, b) => a - b));
}

function isInCable(circuit: Circuit, node: number): boolean {
  const contact = contactAt(circuit, node);
  return contact !== null && 'cable' in contact;
}

type RoleWords = Record<'live' | 'second' | 'return', string>;

const plainWords: RoleWords = { live: 'Core', second: 'Second core', return: 'Return' };

/** What people call a cable's cores, by what it carries. */
const roleWords: Partial<Record<PortClass, RoleWords>> = {
  dc: { live: 'Plus', second: 'Second core', return: 'Minus' },
  rf: { live: 'Centre', second: 'Second core', return: 'Braid' },
};

function nameOfRow(
  circuit: Circuit,
  row: readonly number[],
  words: RoleWords,
): { id: string; words: string; verb: string } {
  const origins = row.map((i) => (circuit.parts[i] as CablePart).origin);
  const wire = origins.find((o) => o.type === 'wire');
  const mate = origins.find((o) => o.type === 'mate');
  const fused = origins.some((o) => o.type === 'cableFuse');
  const verb = fused ? 'opens, or its fuse' : 'opens';
  if (wire?.type === 'wire') return { id: `${wire.role}.${wire.row}`, words: words[wire.role], verb };
  if (mate?.type === 'mate')
    return { id: `${mate.end}.${mate.contact}.${row[0]}`, words: `Contact ${mate.contact} at end ${mate.end}`, verb };
  return { id: 'fuse', words: 'The fuse', verb: 'opens' };
}

function unitFuses(station: Station, circuit: Circuit): Failure[] {
  return circuit.parts.flatMap((part, i): Failure[] => {
    if (part.kind !== 'resistor' || !part.fuse || part.origin.type !== 'element') return [];
    const { unit, element } = part.origin;
    const text = `${fuseName(station, part)} opens`;
    return [{ ...nothing, id: `open:${unit}.${element}`, kind: 'opens', text, at: { unit }, parts: [i] }];
  });
}

/** Switched off, its own fuse gone, its plug pulled: the unit draws nothing and does nothing. */
function powerOf(station: Station, circuit: Circuit): Failure[] {
  return circuit.actors.flatMap((actor, i): Failure[] => {
    if (actor.does !== 'powered') return [];
    const { unit } = actor;
    const loads = actor.feels.flatMap((feel) => (feel.type === 'powered' ? feel.loads : []));
    const text = `${unitOf(station, unit).name} is off`;
    const held = new Map([[i, false]]);
    return [{ ...nothing, id: `off:${unit}`, kind: 'losesPower', text, at: { unit }, parts: loads, held }];
  });
}

function sticking(station: Station, circuit: Circuit): Failure[] {
  const moving = new Set<number>();
  for (const { gate } of [...circuit.parts, ...circuit.rf.edges]) for (const { actor } of gate) moving.add(actor);
  return circuit.actors.flatMap((actor, i): Failure[] => {
    if (!moving.has(i) || actor.does === 'powered' || isByHand(actor)) return [];
    const { unit } = actor;
    const name = `${unitOf(station, unit).name} (${actor.label})`;
    const base = { ...nothing, at: { unit } };
    return [
      { ...base, id: `on:${actor.key}`, kind: 'staysOn', text: `${name} stays on`, held: new Map([[i, true]]) },
      { ...base, id: `off:${actor.key}`, kind: 'staysOff', text: `${name} stays off`, held: new Map([[i, false]]) },
    ];
  });
}

const isByHand = (actor: CircuitActor): boolean => actor.feels.some((feel) => feel.type === 'operator');

function highSupplies(station: Station, circuit: Circuit): Failure[] {
  return circuit.parts.flatMap((part, i): Failure[] => {
    if (part.kind !== 'supply' || part.origin.type !== 'element') return [];
    const { unit, element } = part.origin;
    const { volts, maxVolts = volts } = part.spec;
    if (maxVolts <= volts) return [];
    const text = `${unitOf(station, unit).name} goes to its highest voltage, ${maxVolts} V`;
    const high = new Map([[i, maxVolts]]);
    return [{ ...nothing, id: `high:${unit}.${element}`, kind: 'highVolts', text, at: { unit }, volts: high }];
  });
}
