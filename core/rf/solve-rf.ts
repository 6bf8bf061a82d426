import { type ActorStates, type Circuit, isOpenGate, type RfEdge } from '../circuit/circuit.ts';

/** How RF came to a port: over which edge, from which port, by a selected path or by a leak. */
export interface RfArrival {
  readonly dbm: number;
  readonly from: number | null;
  readonly edge: number | null;
  /** Some part of the way is only a leak through something that is not selected. */
  readonly leak: boolean;
}

/** What one active source does in the station. */
export interface RfField {
  /** Index into `RfNet.sources`. */
  readonly source: number;
  /** Best level at each port by any way, leaks included; null where none arrives. */
  readonly best: readonly (RfArrival | null)[];
  /** Level by selected paths alone. */
  readonly selected: readonly (RfArrival | null)[];
}

export interface RfSolution {
  readonly fields: readonly RfField[];
  /** Ports that hang together by selected paths and cables: the group of each port. */
  readonly group: Int32Array;
}

/** The level at the far end of an edge: loss or gain, a saturating amplifier, isolation when it is not selected. */
function levelAfter(edge: RfEdge, open: boolean, dbm: number): number | null {
  if (!open) return edge.isolationDb === null ? null : dbm - edge.isolationDb;
  const out = dbm - edge.lossDb;
  return edge.saturationDbm === null ? out : Math.min(out, edge.saturationDbm);
}

/**
 * RF levels from every source that is on, at every port, with the way by which they came. Levels add no phases: the
 * strongest way counts. Levels are in dBm into the system's impedance.
 */
export function solveRf(circuit: Circuit, on: ActorStates): RfSolution {
  const { rf } = circuit;
  const open = rf.edges.map((edge) => isOpenGate(edge.gate, on));
  const fields = rf.sources.flatMap((source, i) => {
    if (!isOpenGate(source.gate, on)) return [];
    const spread = (leaks: boolean) => spreadFrom(circuit, open, source.port, source.spec.dbm, leaks);
    return [{ source: i, best: spread(true), selected: spread(false) }];
  });
  return { fields, group: groupPorts(circuit, open) };
}

function spreadFrom(
  circuit: Circuit,
  open: readonly boolean[],
  start: number,
  dbm: number,
  leaks: boolean,
): (RfArrival | null)[] {
  const { ports, edges } = circuit.rf;
  const at: (RfArrival | null)[] = ports.map(() => null);
  at[start] = { dbm, from: null, edge: null, leak: false };
  const around = edgesAround(circuit);
  let wave = [start];
  // A loop with gain would go round for ever: after as many rounds as there are ports every honest way has been walked.
  for (let round = 0; round <= ports.length && wave.length > 0; round++) {
    const next = new Set<number>();
    for (const port of wave) {
      const here = at[port] as RfArrival;
      for (const i of around[port] ?? []) {
        const edge = edges[i] as RfEdge;
        if (edge.oneWay && edge.b === port) continue;
        if (open[i] !== true && !leaks) continue;
        const level = levelAfter(edge, open[i] === true, here.dbm);
        const other = edge.a === port ? edge.b : edge.a;
        if (level === null || level <= (at[other]?.dbm ?? Number.NEGATIVE_INFINITY) + 1e-12) continue;
        at[other] = { dbm: level, from: port, edge: i, leak: here.leak || open[i] !== true };
        next.add(other);
      }
    }
    wave = [...next];
  }
  return at;
}

const around = new WeakMap<Circuit, number[][]>();

function edgesAround(circuit: Circuit): number[][] {
  const known = around.get(circuit);
  if (known) return known;
  const lists: number[][] = circuit.rf.ports.map(() => []);
  circuit.rf.edges.forEach((edge, i) => {
    lists[edge.a]?.push(i);
    lists[edge.b]?.push(i);
  });
  around.set(circuit, lists);
  return lists;
}

function groupPorts(circuit: Circuit, open: readonly boolean[]): Int32Array {
  const group = Int32Array.from(circuit.rf.ports, (_, i) => i);
  const find = (port: number): number => {
    let root = port;
    while (group[root] !== root) root = group[root] as number;
    return root;
  };
  circuit.rf.edges.forEach((edge, i) => {
    if (open[i]) group[find(edge.a)] = find(edge.b);
  });
  return group.map((_, i) => find(i));
}

/** The ports and edges by which RF came to a port, source first. */
export function wayTo(arrivals: readonly (RfArrival | null)[], port: number): { ports: number[]; edges: number[] } {
  const ports: number[] = [];
  const edges: number[] = [];
  const seen = new Set<number>();
  for (let at: number | null = port; at !== null && !seen.has(at); ) {
    seen.add(at);
    ports.unshift(at);
    const arrival: RfArrival | null = arrivals[at] ?? null;
    if (arrival?.edge !== null && arrival?.edge !== undefined) edges.unshift(arrival.edge);
    at = arrival?.from ?? null;
  }
  return { ports, edges };
}

/** The strongest level of any active source at a port; null where none arrives. */
export function levelAt(solution: RfSolution, port: number): { dbm: number; field: RfField; leak: boolean } | null {
  let best: { dbm: number; field: RfField; leak: boolean } | null = null;
  for (const field of solution.fields) {
    const arrival = field.best[port];
    if (arrival && (!best || arrival.dbm > best.dbm)) best = { dbm: arrival.dbm, field, leak: arrival.leak };
  }
  return best;
}
