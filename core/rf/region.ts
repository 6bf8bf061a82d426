import { type ActorStates, type Circuit, isOpenGate, type RfEdge } from '../circuit/circuit.ts';
import type { RegionSolution } from './rf-solution.ts';
import { edgesAround, type LevelAfter, levelAfter, spread } from './spread.ts';

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
    this.around = edgesAround(rf.edges, edges);
  }

  /** The region with these actors on; the same object for the same state. */
  solve(on: ActorStates): RegionSolution {
    let key = '';
    for (const actor of this.actors) key += on[actor] === 1 ? '1' : '0';
    const known = this.known.get(key);
    if (known) return known;
    const { rf } = this.circuit;
    const open = new Set(this.edges.filter((e) => isOpenGate(rf.edges[e]?.gate ?? [], on)));
    const ways = { edges: rf.edges, around: this.around, open };
    const fields = this.sources.flatMap((i) => {
      const source = rf.sources[i];
      if (!source || !isOpenGate(source.gate, on)) return [];
      const { port, spec } = source;
      return [
        {
          source: i,
          best: spread(ways, port, spec.dbm, levelAfter),
          selected: spread(ways, port, spec.dbm, selectedAlone),
        },
      ];
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
}

const selectedAlone: LevelAfter = (edge, i, isOpen, dbm) => (isOpen ? levelAfter(edge, i, isOpen, dbm) : null);

/** The port by which a group is named. */
export function rootOf(group: Map<number, number>, port: number): number {
  let root = port;
  for (let next = above(group, root); next !== root; next = above(group, root)) {
    // Whoever asks next has half as far.
    group.set(root, above(group, next));
    root = next;
  }
  return root;
}

const above = (group: ReadonlyMap<number, number>, port: number): number => group.get(port) ?? port;
