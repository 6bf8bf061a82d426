import type { CircuitPart } from '../circuit/circuit.ts';

/** The two nodes between which a part conducts. */
export function endsOf(part: CircuitPart): readonly [number, number] {
  switch (part.kind) {
    case 'resistor':
      return [part.a, part.b];
    case 'pullUp':
      return [part.node, part.reference];
    case 'diode':
      return [part.anode, part.cathode];
    default:
      return [part.plus, part.minus];
  }
}

/** Of each part of a network its two nodes. */
export type Ends = readonly (readonly [number, number])[];

/**
 * In which order the nodes of a circuit are eliminated and where each conductance is kept meanwhile. It depends on
 * what is joined to what, not on values, so one plan serves every moment of a hook-up.
 */
export interface EliminationPlan {
  readonly size: number;
  readonly order: Int32Array;
  /** So many nodes of `order` come first at which nothing ever changes, with so many pairs of slots. */
  readonly early: number;
  readonly earlyPairs: number;
  /** Slots of node `order[k]` are `slotStart[k]` to `slotStart[k + 1]`; each leads to a node eliminated later. */
  readonly slotStart: Int32Array;
  readonly slotNode: Int32Array;
  /** For each pair of slots of a node, in turn, the slot between their two nodes. */
  readonly pairSlot: Int32Array;
  /** The slot of each part; -1 where both its ends are one node. */
  readonly partSlot: Int32Array;
}

/**
 * The order of least degree first: trees come out in linear time, meshes with little fill. Nodes in `changing` come after
 * all others, so that what never changes is eliminated once.
 */
export function planElimination(size: number, ends: Ends, changing: ReadonlySet<number>): EliminationPlan {
  const neighbours: Set<number>[] = Array.from({ length: size }, () => new Set());
  for (const [a, b] of ends) if (a !== b) join(neighbours, a, b);
  const { order, later } = eliminate(neighbours, changing);
  const early = size - changing.size;
  const earlyPairs = later.slice(0, early).reduce((sum, { length }) => sum + (length * (length - 1)) / 2, 0);
  const slotOf: Map<number, number>[] = Array.from({ length: size }, () => new Map());
  const slotStart = new Int32Array(size + 1);
  const slotNodes: number[] = [];
  order.forEach((node, k) => {
    slotStart[k] = slotNodes.length;
    for (const other of later[k] ?? []) {
      slotOf[node]?.set(other, slotNodes.length);
      slotNodes.push(other);
    }
  });
  slotStart[size] = slotNodes.length;
  const between = (a: number, b: number) => slotOf[a]?.get(b) ?? slotOf[b]?.get(a) ?? -1;
  const pairs: number[] = [];
  for (const nodes of later)
    for (let p = 0; p < nodes.length; p++)
      for (let q = p + 1; q < nodes.length; q++) pairs.push(between(nodes[p] ?? 0, nodes[q] ?? 0));
  const partSlot = Int32Array.from(ends, ([a, b]) => between(a, b));
  return {
    size,
    order: Int32Array.from(order),
    early,
    earlyPairs,
    slotStart,
    slotNode: Int32Array.from(slotNodes),
    pairSlot: Int32Array.from(pairs),
    partSlot,
  };
}

function join(neighbours: Set<number>[], a: number, b: number) {
  neighbours[a]?.add(b);
  neighbours[b]?.add(a);
}

interface Order {
  readonly order: number[];
  readonly later: number[][];
}

function eliminate(neighbours: Set<number>[], changing: ReadonlySet<number>): Order {
  const done: Order = { order: [], later: [] };
  const isIn = (wanted: boolean) => (node: number) => changing.has(node) === wanted;
  for (const wanted of [false, true]) eliminateSome(neighbours, isIn(wanted), done);
  return done;
}

/** Eliminates those of the nodes that are asked for. */
function eliminateSome(neighbours: Set<number>[], isAsked: (node: number) => boolean, { order, later }: Order) {
  const buckets: Set<number>[] = [];
  let left = 0;
  const put = (node: number, degree: number) => {
    while (buckets.length <= degree) buckets.push(new Set());
    buckets[degree]?.add(node);
  };
  neighbours.forEach((set, node) => {
    if (!isAsked(node)) return;
    left += 1;
    put(node, set.size);
  });
  for (let least = 0; left > 0; ) {
    const node = buckets[least]?.values().next().value;
    if (node === undefined) {
      least++;
      continue;
    }
    buckets[least]?.delete(node);
    const around = [...(neighbours[node] ?? [])];
    left -= 1;
    order.push(node);
    later.push(around);
    for (const other of around) {
      const set = neighbours[other] as Set<number>;
      buckets[set.size]?.delete(other);
      set.delete(node);
      for (const third of around) if (third !== other) set.add(third);
    }
    for (const other of around) {
      if (!isAsked(other)) continue;
      const degree = neighbours[other]?.size ?? 0;
      put(other, degree);
      if (degree < least) least = degree;
    }
  }
}
