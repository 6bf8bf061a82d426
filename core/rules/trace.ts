import { type ActorStates, type Circuit, isOpenGate, type Resistor, type SupplyPart } from '../circuit/circuit.ts';
import { type Numbered, suppliesOf } from './look.ts';

/** A way through conductors alone. */
export interface Way {
  readonly parts: readonly number[];
  readonly ohms: number;
}

/** Above this a resistance is not a conductor any more. */
const conductorOhms = 20;

/** Conductors in force at each node: `[part, other node]`. */
export type Conductors = readonly (readonly (readonly [number, number])[])[];

/** What joins the contacts of a circuit by metal with these actors on; loads, pull-ups and terminations are not metal. */
export function conductorsOf(
  circuit: Circuit,
  on: ActorStates,
  leaveOut: (part: Resistor, index: number) => boolean = () => false,
): Conductors {
  const at: [number, number][][] = circuit.nodes.map(() => []);
  circuit.parts.forEach((part, i) => {
    if (
      part.kind !== 'resistor' ||
      part.lumped ||
      part.ohms > conductorOhms ||
      !isOpenGate(part.gate, on) ||
      leaveOut(part, i)
    )
      return;
    at[part.a]?.push([i, part.b]);
    at[part.b]?.push([i, part.a]);
  });
  return at;
}

/** Every node that metal joins to this one, itself included. */
export function joinedTo(conductors: Conductors, start: number): Set<number> {
  const seen = new Set([start]);
  const open = [start];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    for (const [, other] of conductors[node] ?? []) {
      if (seen.has(other)) continue;
      seen.add(other);
      open.push(other);
    }
  }
  return seen;
}

/** The supplies (parts) whose plus metal joins to this node; those that share only its ground feed something else. */
export function feedersOf(circuit: Circuit, on: ActorStates, node: number): Numbered<SupplyPart>[] {
  const joined = joinedTo(conductorsOf(circuit, on), node);
  return suppliesOf(circuit).filter(({ part }) => joined.has(part.plus));
}

/** The way of least resistance between two nodes, or null. */
export function leastWay(circuit: Circuit, conductors: Conductors, from: number, to: number): Way | null {
  const ohms = new Map([[from, 0]]);
  const came = new Map<number, readonly [number, number]>();
  const open = new Set([from]);
  while (open.size > 0) {
    let node = -1;
    for (const n of open) if (node < 0 || (ohms.get(n) ?? 0) < (ohms.get(node) ?? 0)) node = n;
    open.delete(node);
    if (node === to) break;
    for (const [part, other] of conductors[node] ?? []) {
      const there = (ohms.get(node) ?? 0) + (circuit.parts[part] as Resistor).ohms;
      if (there >= (ohms.get(other) ?? Number.POSITIVE_INFINITY)) continue;
      ohms.set(other, there);
      came.set(other, [part, node]);
      open.add(other);
    }
  }
  if (!ohms.has(to)) return null;
  const parts: number[] = [];
  for (let node = to; node !== from; ) {
    const step = came.get(node);
    if (!step) return null;
    parts.unshift(step[0]);
    node = step[1];
  }
  return { parts, ohms: ohms.get(to) ?? 0 };
}
