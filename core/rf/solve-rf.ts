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

/** RF levels everywhere at one moment. */
export interface RfSolution {
  readonly fields: readonly RfField[];
  /** Ports that hang together by selected paths and cables: the group of each port, named by one of them. */
  readonly group: Int32Array;
}

/** The level at the far end of an edge: loss or gain, a saturating amplifier, isolation when it is not selected. */
function levelAfter(edge: RfEdge, open: boolean, dbm: number): number | null {
  if (!open) return edge.isolationDb === null ? null : dbm - edge.isolationDb;
  const out = dbm - edge.lossDb;
  return edge.saturationDbm === null ? out : Math.min(out, edge.saturationDbm);
}

/** Ports that some path or cable joins, selected or not: RF never leaves a region. */
class Region {
  private readonly known = new Map<string, RegionSolution>();
  /** Actors that select its paths or make its sources send. */
  readonly actors: readonly number[];

  constructor(
    private readonly circuit: Circuit,
    readonly ports: readonly number[],
    private readonly edges: readonly number[],
    private readonly sources: readonly number[],
  ) {
    const { rf } = circuit;
    const gates = [...edges.map((e) => rf.edges[e]?.gate ?? []), ...sources.map((s) => rf.sources[s]?.gate ?? [])];
    this.actors = [...new Set(gates.flatMap((gate) => gate.map((g) => g.actor)))];
  }

  /** The region with these actors on; the same object for the same state. */
  solve(on: ActorStates): RegionSolution {
    const key = this.actors.map((actor) => on[actor] ?? 0).join('');
    const known = this.known.get(key);
    if (known) return known;
    const { rf } = this.circuit;
    const open = new Set(this.edges.filter((e) => isOpenGate(rf.edges[e]?.gate ?? [], on)));
    const fields = this.sources.flatMap((i) => {
      const source = rf.sources[i];
      if (!source || !isOpenGate(source.gate, on)) return [];
      const spread = (leaks: boolean) => spreadFrom(this.circuit, open, source.port, source.spec.dbm, leaks);
      return [{ source: i, best: spread(true), selected: spread(false) }];
    });
    const solution = { fields, group: this.groups(open) };
    this.known.set(key, solution);
    return solution;
  }

  private groups(open: ReadonlySet<number>): Map<number, number> {
    const group = new Map(this.ports.map((port) => [port, port]));
    for (const e of open) {
      const edge = this.circuit.rf.edges[e] as RfEdge;
      group.set(rootOf(group, edge.a), rootOf(group, edge.b));
    }
    return new Map(this.ports.map((port) => [port, rootOf(group, port)]));
  }
}

interface RegionSolution {
  readonly fields: readonly RfField[];
  readonly group: ReadonlyMap<number, number>;
}

function rootOf(group: ReadonlyMap<number, number>, port: number): number {
  let root = port;
  for (let next = group.get(root); next !== undefined && next !== root; next = group.get(root)) root = next;
  return root;
}

/** Solves the RF of one circuit for any of its states, region by region, each once for every state it is met in. */
export class RfSolver {
  private readonly regions: readonly Region[];

  constructor(private readonly circuit: Circuit) {
    const { ports, edges, sources } = circuit.rf;
    const joined = new Map(ports.map((_, port) => [port, port]));
    for (const { a, b } of edges) joined.set(rootOf(joined, a), rootOf(joined, b));
    const members = new Map<number, { ports: number[]; edges: number[]; sources: number[] }>();
    const at = (port: number) => {
      const root = rootOf(joined, port);
      const found = members.get(root) ?? { ports: [], edges: [], sources: [] };
      members.set(root, found);
      return found;
    };
    ports.forEach((_, port) => {
      at(port).ports.push(port);
    });
    edges.forEach((edge, e) => {
      at(edge.a).edges.push(e);
    });
    sources.forEach((source, i) => {
      at(source.port).sources.push(i);
    });
    this.regions = [...members.values()].map((m) => new Region(circuit, m.ports, m.edges, m.sources));
  }

  /** For each region, the actors on which it depends and its ports. */
  get dependencies(): readonly { readonly actors: readonly number[]; readonly ports: readonly number[] }[] {
    return this.regions;
  }

  /**
   * RF levels from every source that is on, at every port, with the way by which they came. Levels add no phases: the
   * strongest way counts. Levels are in dBm into the system's impedance.
   */
  solve(on: ActorStates): RfSolution {
    const solved = this.regions.map((region) => region.solve(on));
    const fields = solved.flatMap((s) => s.fields);
    const size = this.circuit.rf.ports.length;
    let group: Int32Array | null = null;
    return {
      fields,
      get group() {
        if (group) return group;
        group = new Int32Array(size);
        for (const region of solved) for (const [port, root] of region.group) group[port] = root;
        return group;
      },
    };
  }
}

function spreadFrom(
  circuit: Circuit,
  open: ReadonlySet<number>,
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
        if (!leaks && !open.has(i)) continue;
        const level = levelAfter(edge, open.has(i), here.dbm);
        const other = edge.a === port ? edge.b : edge.a;
        if (level === null || level <= (at[other]?.dbm ?? Number.NEGATIVE_INFINITY) + 1e-12) continue;
        at[other] = { dbm: level, from: port, edge: i, leak: here.leak || !open.has(i) };
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
