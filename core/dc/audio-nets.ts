import type { Circuit, CircuitPart } from '../circuit/circuit.ts';
import { remember } from '../station/remember.ts';
import { listAtNodes } from './find-blocks.ts';

/** What audio can get to from one output without passing through a box's metal, which counts as one ground. */
export interface AudioNet {
  readonly nodes: readonly number[];
  /** Indices into `Circuit.parts`: what conducts between these nodes, in any state. */
  readonly parts: readonly number[];
  /** Indices into `Signals.sources` and `Signals.loads`. */
  readonly sources: readonly number[];
  readonly loads: readonly number[];
  /** Actors on which any of these depends. */
  readonly actors: readonly number[];
}

/** The nets of a circuit that have an output in them. */
export const audioNetsOf = remember((circuit: Circuit): readonly AudioNet[] => {
  const { sources, loads } = circuit.signals;
  if (sources.length === 0) return [];
  const neighbours = neighboursOf(circuit);
  const netOf = new Map<number, number>();
  const nets: { nodes: number[]; parts: Set<number>; sources: number[]; loads: number[] }[] = [];
  sources.forEach(({ node }) => {
    if (netOf.has(node)) return;
    const net = { nodes: [] as number[], parts: new Set<number>(), sources: [], loads: [] };
    const open = [node];
    netOf.set(node, nets.length);
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      net.nodes.push(at);
      if (isChassis(circuit, at)) continue;
      for (const { part, other } of neighbours(at)) {
        if (part !== null) net.parts.add(part);
        if (netOf.get(other) === nets.length) continue;
        if (!isChassis(circuit, other)) netOf.set(other, nets.length);
        else if (net.nodes.includes(other)) continue;
        open.push(other);
      }
    }
    nets.push(net);
  });
  const fileIn = (list: 'sources' | 'loads', ends: readonly { node: number }[]) => {
    ends.forEach(({ node }, i) => {
      const net = netOf.get(node);
      if (net !== undefined) nets[net]?.[list].push(i);
    });
  };
  fileIn('sources', sources);
  fileIn('loads', loads);
  return nets.map((net) => {
    const gates = [
      ...[...net.parts].map((i) => circuit.parts[i]?.gate ?? []),
      ...net.sources.map((i) => sources[i]?.gate ?? []),
      ...net.loads.map((i) => loads[i]?.gate ?? []),
    ];
    const actors = [...new Set(gates.flatMap((gate) => gate.map(({ actor }) => actor)))];
    return { ...net, nodes: [...new Set(net.nodes)], parts: [...net.parts], actors };
  });
});

export const isChassis = ({ nodes }: Circuit, node: number): boolean => nodes[node]?.endsWith('.chassis') ?? false;

interface Neighbour {
  /** Null for what audio alone sees. */
  readonly part: number | null;
  readonly other: number;
}

interface Joint {
  readonly part: number | null;
  readonly ends: readonly [number, number];
}

/** Resistances, bias resistors, and what inputs and outputs have between contact and reference, by the nodes they are at. */
function neighboursOf({ nodes, parts, signals }: Circuit): (node: number) => readonly Neighbour[] {
  const joints: Joint[] = [];
  parts.forEach((part, i) => {
    const ends = audioEnds(part);
    if (ends) joints.push({ part: i, ends });
  });
  for (const { node, reference } of [...signals.sources, ...signals.loads])
    joints.push({ part: null, ends: [node, reference] });
  const { start, items } = listAtNodes(
    nodes.length,
    joints.map(({ ends }) => ends),
  );
  return (node) =>
    Array.from(items.subarray(start[node], start[node + 1]), (item) => {
      const { part, ends } = joints[item] as Joint;
      return { part, other: ends[0] === node ? ends[1] : ends[0] };
    });
}

/** Between which nodes a part conducts audio; null for what has no business with it. */
function audioEnds(part: CircuitPart): readonly [number, number] | null {
  if (part.kind === 'pullUp') return [part.node, part.reference];
  return part.kind === 'resistor' ? [part.a, part.b] : null;
}
