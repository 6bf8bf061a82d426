import { type ActorStates, type Circuit, isMetal, isOpenGate, type Resistor } from '../../circuit/circuit.ts';
import { noteNet } from '../../circuit/find-nets.ts';
import { remember } from '../../station/remember.ts';

/** The conductors of a circuit at each node, and those of them that join in the state that is looked at. */
export interface Conductors {
  /** `[part, other node]` by node. */
  readonly at: readonly (readonly (readonly [number, number])[])[];
  joins(part: number): boolean;
  /** Whoever follows them says from where. */
  from(node: number): void;
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

const metalFrom = (circuit: Circuit): Pick<Conductors, 'at' | 'from'> => ({
  at: metalOf(circuit),
  from: (node) => noteNet(circuit, node),
});

/** What joins the contacts of a circuit by metal with these actors on. */
export const conductorsOf = (
  circuit: Circuit,
  on: ActorStates,
  leaveOut: (part: Resistor, index: number) => boolean = () => false,
): Conductors => ({
  ...metalFrom(circuit),
  joins: (i) => {
    const part = circuit.parts[i];
    return part?.kind === 'resistor' && isOpenGate(part.gate, on) && !leaveOut(part, i);
  },
});

/** The conductors that no actor moves: what is joined whoever is on. */
export const fixedConductors = (circuit: Circuit): Conductors => ({
  ...metalFrom(circuit),
  joins: (i) => {
    const part = circuit.parts[i];
    return part?.kind === 'resistor' && part.gate.length === 0;
  },
});

/** Metal that joins with these actors on, and diodes. */
export const passersOf = (circuit: Circuit, on: ActorStates): Conductors => ({
  ...metalFrom(circuit),
  joins: (i) => isOpenGate(circuit.parts[i]?.gate ?? [], on),
});

/** All that can ever join, relays in either position and diodes among it, but for one part. */
export const allMetal = (circuit: Circuit, except: number): Conductors => ({
  ...metalFrom(circuit),
  joins: (i) => i !== except,
});

/** Every node that metal joins to this one, itself included. */
export function joinedTo({ at, joins, from }: Conductors, start: number): Set<number> {
  from(start);
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
