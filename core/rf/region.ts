import { type ActorStates, type Circuit, isOpenGate, type RfEdge } from '../circuit/circuit.ts';
import type { RegionSolution, RfArrival } from './rf-solution.ts';

/** Ports that some path or cable joins, selected or not: RF never leaves a region. */
export class Region {
  private readonly known = new Map<string, RegionSolution>();
  /** Actors that select its paths, make its sources send, or put its loads on. */
  readonly actors: readonly number[];
  /** Edges at each port. */
  private readonly around: ReadonlyMap<number, readonly number[]>;

  constructor(
    private readonly circuit: Circuit,
    readonly ports: readonly number[],
    private readonly edges: readonly number[],
    private readonly sources: readonly number[],
    loads: readonly number[],
  ) {
    const { rf } = circuit;
    const actors = new Set<number>();
    for (const e of edges) for (const { actor } of rf.edges[e]?.gate ?? []) actors.add(actor);
    for (const s of sources) for (const { actor } of rf.sources[s]?.gate ?? []) actors.add(actor);
    for (const l of loads) for (const { actor } of rf.loads[l]?.gate ?? []) actors.add(actor);
    this.actors = [...actors];
    const around = new Map<number, number[]>(ports.map((port) => [port, []]));
    for (const e of edges) {
      const edge = rf.edges[e] as RfEdge;
      around.get(edge.a)?.push(e);
      around.get(edge.b)?.push(e);
    }
    this.around = around;
  }

  /** The region with these actors on; the same object for the same state. */
  solve(on: ActorStates): RegionSolution {
    let key = '';
    for (const actor of this.actors) key += on[actor] === 1 ? '1' : '0';
    const known = this.known.get(key);
    if (known) return known;
    const { rf } = this.circuit;
    const open = new Set(this.edges.filter((e) => isOpenGate(rf.edges[e]?.gate ?? [], on)));
    const fields = this.sources.flatMap((i) => {
      const source = rf.sources[i];
      if (!source || !isOpenGate(source.gate, on)) return [];
      const spread = (leaks: boolean) => this.spreadFrom(source.port, source.spec.dbm, open, leaks);
      return [{ source: i, best: spread(true), selected: spread(false) }];
    });
    const solution = { fields, group: this.groups(open) };
    this.known.set(key, solution);
    return solution;
  }

  private groups(open: ReadonlySet<number>): ReadonlyMap<number, number> {
    const group = new Map(this.ports.map((port) => [port, port]));
    for (const e of open) {
      const edge = this.circuit.rf.edges[e] as RfEdge;
      group.set(rootOf(group, edge.a), rootOf(group, edge.b));
    }
    return new Map(this.ports.map((port) => [port, rootOf(group, port)]));
  }

  private spreadFrom(start: number, dbm: number, open: ReadonlySet<number>, leaks: boolean): Map<number, RfArrival> {
    const { edges } = this.circuit.rf;
    const at = new Map<number, RfArrival>([[start, { dbm, from: null, edge: null, leak: false }]]);
    let wave = [start];
    // A loop with gain would go round for ever: after as many rounds as there are ports every honest way has been walked.
    for (let round = 0; round <= this.ports.length && wave.length > 0; round++) {
      const next = new Set<number>();
      for (const port of wave) {
        const here = at.get(port) as RfArrival;
        for (const i of this.around.get(port) ?? []) {
          const edge = edges[i] as RfEdge;
          if (edge.oneWay && edge.b === port) continue;
          const isOpen = open.has(i);
          if (!leaks && !isOpen) continue;
          const level = levelAfter(edge, isOpen, here.dbm);
          const other = edge.a === port ? edge.b : edge.a;
          if (level === null || level <= (at.get(other)?.dbm ?? Number.NEGATIVE_INFINITY) + 1e-12) continue;
          at.set(other, { dbm: level, from: port, edge: i, leak: here.leak || !isOpen });
          next.add(other);
        }
      }
      wave = [...next];
    }
    return at;
  }
}

/** The level at the far end of an edge: loss or gain, a saturating amplifier, isolation when it is not selected. */
function levelAfter(edge: RfEdge, open: boolean, dbm: number): number | null {
  if (!open) return edge.isolationDb === null ? null : dbm - edge.isolationDb;
  const out = dbm - edge.lossDb;
  return edge.saturationDbm === null ? out : Math.min(out, edge.saturationDbm);
}

/** The port by which a group is named. */
export function rootOf(group: ReadonlyMap<number, number>, port: number): number {
  let root = port;
  for (let next = group.get(root); next !== undefined && next !== root; next = group.get(root)) root = next;
  return root;
}
