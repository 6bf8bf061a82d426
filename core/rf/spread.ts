import type { RfEdge } from '../circuit/circuit.ts';
import type { RfArrival, RfArrivals } from './rf-solution.ts';

/** Ways between ports, some of them selected. */
export interface Ways {
  readonly edges: readonly RfEdge[];
  /** Indices into `edges`, by port. */
  readonly around: ReadonlyMap<number, readonly number[]>;
  /** Those that are selected just now. */
  readonly open: ReadonlySet<number>;
}

/** The edges at each port that has any, by their indices. */
export function edgesAround(edges: readonly RfEdge[], indices: Iterable<number> = edges.keys()): Map<number, number[]> {
  const around = new Map<number, number[]>();
  for (const i of indices) {
    const { a, b } = edges[i] as RfEdge;
    for (const port of a === b ? [a] : [a, b]) {
      const list = around.get(port);
      if (list) list.push(i);
      else around.set(port, [i]);
    }
  }
  return around;
}

/** What comes out of the far end of an edge at the near end of which there are so many dBm; null where nothing does. */
export type LevelAfter = (edge: RfEdge, index: number, isOpen: boolean, dbm: number) => number | null;

/**
 * The strongest level at each port that a level at one port can make, by ways that come to no port twice. Every arrival
 * is one step on from the arrival at the port that it names, so that they are a tree: whoever walks back comes to the
 * start. A ring that amplifies is gone round once: what it makes of itself is `rf-feedback`'s to tell.
 */
export function spread({ edges, around, open }: Ways, start: number, dbm: number, levelAfter: LevelAfter): RfArrivals {
  const at = new Map<number, RfArrival>([[start, { dbm, from: null, edge: null, leak: false }]]);
  const levelAt = (port: number) => at.get(port)?.dbm ?? Number.NEGATIVE_INFINITY;
  let wave = [start];
  // No honest way has more steps than there are ports.
  for (let round = 0; round <= around.size && wave.length > 0; round++) {
    const next = new Set<number>();
    for (const port of wave) {
      const here = at.get(port) as RfArrival;
      for (const i of around.get(port) ?? []) {
        const edge = edges[i] as RfEdge;
        if (edge.oneWay && edge.b === port) continue;
        const isOpen = open.has(i);
        const level = levelAfter(edge, i, isOpen, here.dbm);
        const other = edge.a === port ? edge.b : edge.a;
        if (level === null || !(level > levelAt(other) + 1e-12)) continue;
        if (at.has(other) && isOnWay(at, other, port)) continue;
        at.set(other, { dbm: level, from: port, edge: i, leak: here.leak || !isOpen });
        next.add(other);
      }
    }
    // The strongest go first, in whatever order they were drawn.
    wave = [...next].sort((a, b) => levelAt(b) - levelAt(a));
  }
  return at;
}

/** Whether RF came by a port on its way to another one, or is there. */
function isOnWay(at: RfArrivals, port: number, to: number): boolean {
  for (let here: number | null = to; here !== null; here = at.get(here)?.from ?? null) if (here === port) return true;
  return false;
}

/** Loss or gain, a saturating amplifier, isolation where it is not selected. */
export const levelAfter: LevelAfter = (edge, _, isOpen, dbm) => {
  if (!isOpen) return edge.isolationDb === null ? null : dbm - edge.isolationDb;
  const out = dbm - edge.lossDb;
  return edge.saturationDbm === null ? out : Math.min(out, edge.saturationDbm);
};
