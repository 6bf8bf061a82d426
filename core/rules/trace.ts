import {
  type ActorStates,
  type Circuit,
  isMetal,
  isOpenGate,
  type Resistor,
  type SupplyPart,
} from '../circuit/circuit.ts';
import type { Reach } from '../keydown/key-down.ts';
import { remember } from '../station/remember.ts';
import { type Numbered, suppliesOf, unitOfPart } from './look.ts';
import { NearestFirst } from './nearest-first.ts';

/** A way through conductors alone. */
export interface Way {
  readonly parts: readonly number[];
  readonly ohms: number;
}

/** The conductors of a circuit at each node, and those of them that join in the state that is looked at. */
export interface Conductors {
  /** `[part, other node]` by node. */
  readonly at: readonly (readonly (readonly [number, number])[])[];
  joins(part: number): boolean;
}

/** All metal and all diodes at each node, whether they join just now or not; loads, pull-ups and terminations are not metal. */
const metalOf = remember((circuit: Circuit): Conductors['at'] => {
  const at: [number, number][][] = circuit.nodes.map(() => []);
  circuit.parts.forEach((part, i) => {
    if (part.kind !== 'diode' && !isMetal(part)) return;
    const [a, b] = part.kind === 'diode' ? [part.anode, part.cathode] : [part.a, part.b];
    at[a]?.push([i, b]);
    at[b]?.push([i, a]);
  });
  return at;
});

/** What joins the contacts of a circuit by metal with these actors on. */
export const conductorsOf = (
  circuit: Circuit,
  on: ActorStates,
  leaveOut: (part: Resistor, index: number) => boolean = () => false,
): Conductors => ({
  at: metalOf(circuit),
  joins: (i) => {
    const part = circuit.parts[i];
    return part?.kind === 'resistor' && isOpenGate(part.gate, on) && !leaveOut(part, i);
  },
});

/** The conductors that no actor moves: what is joined whoever is on. */
export const fixedConductors = (circuit: Circuit): Conductors => ({
  at: metalOf(circuit),
  joins: (i) => {
    const part = circuit.parts[i];
    return part?.kind === 'resistor' && part.gate.length === 0;
  },
});

/** Metal that joins with these actors on, and diodes. */
export const passersOf = (circuit: Circuit, on: ActorStates): Conductors => ({
  at: metalOf(circuit),
  joins: (i) => isOpenGate(circuit.parts[i]?.gate ?? [], on),
});

/** All that can ever join, relays in either position and diodes among it, but for one part. */
export const allMetal = (circuit: Circuit, except: number): Conductors => ({
  at: metalOf(circuit),
  joins: (i) => i !== except,
});

/** Every node that metal joins to this one, itself included. */
export function joinedTo({ at, joins }: Conductors, start: number): Set<number> {
  const seen = new Set([start]);
  const open = [start];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    for (const [part, other] of at[node] ?? []) {
      if (seen.has(other) || !joins(part)) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return seen;
}

/** The supplies (parts), the same way in whatever order they were drawn. */
const suppliesByName = remember((circuit: Circuit) =>
  suppliesOf(circuit).toSorted((a, b) => nameOf(a).localeCompare(nameOf(b))),
);

/**
 * The supplies (parts) whose plus metal or diodes join to this node; those that share only its ground feed something
 * else.
 */
export function feedersOf(circuit: Circuit, on: ActorStates, node: number): Numbered<SupplyPart>[] {
  const joins = (i: number) => isOpenGate(circuit.parts[i]?.gate ?? [], on);
  return suppliesAmong(circuit, joinedTo({ at: metalOf(circuit), joins }, node));
}

/** Of the supplies that feed this node the one that gives most, since two may stand side by side. */
export const mainFeederOf = (circuit: Circuit, { on, dc }: Reach, node: number): Numbered<SupplyPart> | undefined =>
  feedersOf(circuit, on, node)
    .map((supply) => ({ supply, amps: dc.ampsIn(supply.index) }))
    .reduce<{ supply: Numbered<SupplyPart>; amps: number } | undefined>(
      (most, next) => (most && most.amps >= next.amps - 1e-9 ? most : next),
      undefined,
    )?.supply;

/** The supplies whose plus is one of these nodes. */
export const suppliesAmong = (circuit: Circuit, nodes: ReadonlySet<number>): Numbered<SupplyPart>[] =>
  suppliesByName(circuit).filter(({ part }) => nodes.has(part.plus));

const nameOf = ({ part }: Numbered<SupplyPart>): string => `${unitOfPart(part)} ${part.spec.id}`;

/** The way of least resistance between two nodes, or null. */
export const leastWay = (circuit: Circuit, conductors: Conductors, from: number, to: number): Way | null =>
  leastWaysFrom(circuit, conductors, from, to)(to);

/** The ways of least resistance from a node to any other one, looked for once; `until` is the only one asked for. */
export function leastWaysFrom(
  circuit: Circuit,
  { at, joins }: Conductors,
  from: number,
  until = -1,
): (to: number) => Way | null {
  const ohms = new Map([[from, 0]]);
  const came = new Map<number, readonly [number, number]>();
  const settled = new Set<number>();
  const open = new NearestFirst();
  open.put(from, 0);
  for (let next = open.take(); next && next.node !== until; next = open.take()) {
    const { node } = next;
    // Another way to it was shorter. Whatever the ohms are, each node is gone on from once.
    if (settled.has(node)) continue;
    settled.add(node);
    for (const [part, other] of at[node] ?? []) {
      if (!joins(part) || settled.has(other)) continue;
      const there = next.ohms + (circuit.parts[part] as Resistor).ohms;
      if (!(there < (ohms.get(other) ?? Number.POSITIVE_INFINITY))) continue;
      ohms.set(other, there);
      came.set(other, [part, node]);
      open.put(other, there);
    }
  }
  return (to) => {
    if (!ohms.has(to)) return null;
    const parts: number[] = [];
    for (let node = to; node !== from; ) {
      const step = came.get(node);
      if (!step) return null;
      parts.push(step[0]);
      node = step[1];
    }
    return { parts: parts.reverse(), ohms: ohms.get(to) ?? 0 };
  };
}
