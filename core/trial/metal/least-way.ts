import type { Circuit, Resistor } from '../../circuit/circuit.ts';
import type { Conductors } from './conductors.ts';
import { NearestFirst } from './nearest-first.ts';

/** A way through conductors alone. */
export interface Way {
  readonly parts: readonly number[];
  readonly ohms: number;
}

/** The way of least resistance between two nodes, or null. */
export const leastWay = (circuit: Circuit, conductors: Conductors, from: number, to: number): Way | null =>
  leastWaysFrom(circuit, conductors, from, to)(to);

/** The ways of least resistance from a node to any other one, looked for once; `until` is the only one asked for. */
export function leastWaysFrom(
  circuit: Circuit,
  { at, joins, from: note }: Conductors,
  from: number,
  until = -1,
): (to: number) => Way | null {
  note(from);
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
