import { type ActorStates, isOpenGate, type RfEdge, type RfNet } from '../circuit/circuit.ts';
import { Groups } from '../circuit/groups.ts';
import type { RegionSolution } from './rf-solution.ts';
import { edgesAround, type LevelAfter, levelAfter, spread } from './spread.ts';

/** What is in a region, by the numbers of the net. */
export interface RegionMembers {
  readonly ports: readonly number[];
  readonly edges: readonly number[];
  readonly sources: readonly number[];
  readonly loads: readonly number[];
}

/** Ports that some path or cable joins, selected or not: RF never leaves a region. */
export class Region {
  private readonly known = new Map<string, RegionSolution>();
  /** Actors that select its paths, make its sources send, or put its loads on. */
  readonly actors: readonly number[];
  /** Edges at each port. */
  private readonly around: ReadonlyMap<number, readonly number[]>;

  constructor(
    private readonly rf: RfNet,
    readonly members: RegionMembers,
  ) {
    const { edges, sources, loads } = members;
    const actors = new Set<number>();
    for (const e of edges) for (const { actor } of rf.edges[e]?.gate ?? []) actors.add(actor);
    for (const s of sources) for (const { actor } of rf.sources[s]?.gate ?? []) actors.add(actor);
    for (const l of loads) for (const { actor } of rf.loads[l]?.gate ?? []) actors.add(actor);
    this.actors = [...actors];
    this.around = edgesAround(rf.edges, edges);
  }

  /** Whether a region of another net has the very same members under the same numbers. */
  isSameIn(rf: RfNet, { ports, edges, sources, loads }: RegionMembers): boolean {
    const { rf: own, members } = this;
    const isSame = <T>(numbers: readonly number[], others: readonly number[], all: readonly T[], known: readonly T[]) =>
      numbers.length === others.length && numbers.every((n, i) => n === others[i] && all[n] === known[n]);
    return (
      rf.hertz === own.hertz &&
      isSame(ports, members.ports, rf.ports, own.ports) &&
      isSame(edges, members.edges, rf.edges, own.edges) &&
      isSame(sources, members.sources, rf.sources, own.sources) &&
      isSame(loads, members.loads, rf.loads, own.loads)
    );
  }

  /** The region with these actors on; the same object for the same state. */
  solve(on: ActorStates): RegionSolution {
    let key = '';
    for (const actor of this.actors) key += on[actor] === 1 ? '1' : '0';
    const known = this.known.get(key);
    if (known) return known;
    const { rf } = this;
    const { edges, sources } = this.members;
    const open = new Set(edges.filter((e) => isOpenGate(rf.edges[e]?.gate ?? [], on)));
    const ways = { edges: rf.edges, around: this.around, open };
    const fields = sources.flatMap((i) => {
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
    const { ports } = this.members;
    const at = new Map(ports.map((port, i) => [port, i]));
    const groups = new Groups(ports.length);
    for (const e of open) {
      const { a, b } = this.rf.edges[e] as RfEdge;
      groups.join(at.get(a) as number, at.get(b) as number);
    }
    return new Map(ports.map((port, i) => [port, ports[groups.nameOf(i)] as number]));
  }
}

const selectedAlone: LevelAfter = (edge, i, isOpen, dbm) => (isOpen ? levelAfter(edge, i, isOpen, dbm) : null);
