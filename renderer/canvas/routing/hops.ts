import type { Point } from './geometry.ts';

/** A run that hops: `[from, to]` along x at the height y, wide enough for all that it hops over there. */
export interface Hop {
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
}

/** Of a cable that hops over none; always the same list, so that nothing is drawn anew for it. */
export const noHops: readonly Hop[] = [];

/** Nearer together than this, two hops are one. */
const mergePx = 16;
/** A hop needs this much straight run on both sides. */
const roomPx = 7;

interface Upright {
  readonly id: string;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where level runs cross upright runs of other cables: the level one hops. */
export function findHops(routes: ReadonlyMap<string, readonly Point[]>): Map<string, Hop[]> {
  const uprights: Upright[] = [];
  for (const [id, points] of routes) {
    eachRun(points, (p, q) => {
      if (p.x === q.x) uprights.push({ id, x: p.x, top: Math.min(p.y, q.y), bottom: Math.max(p.y, q.y) });
    });
  }
  uprights.sort((a, b) => a.x - b.x);
  const hops = new Map<string, Hop[]>();
  for (const [id, points] of routes) {
    const found: Hop[] = [];
    eachRun(points, (p, q) => {
      if (p.y === q.y) found.push(...hopsOnRun(id, p, q, uprights));
    });
    hops.set(id, found);
  }
  return hops;
}

/** The new hops, and of cables whose hops are what they were the old ones: then nothing of them is drawn anew. */
export function keptHops(before: ReadonlyMap<string, Hop[]>, after: ReadonlyMap<string, Hop[]>): Map<string, Hop[]> {
  return new Map([...after].map(([id, hops]) => [id, sameHops(before.get(id), hops) ?? hops]));
}

function sameHops(old: Hop[] | undefined, hops: readonly Hop[]): Hop[] | undefined {
  const same = old?.length === hops.length && old.every((hop, i) => isSame(hop, hops[i]));
  return same ? old : undefined;
}

const isSame = (one: Hop, other: Hop | undefined): boolean =>
  one.y === other?.y && one.fromX === other.fromX && one.toX === other.toX;

function eachRun(points: readonly Point[], run: (p: Point, q: Point) => void) {
  points.forEach((q, i) => {
    const p = points[i - 1];
    if (p) run(p, q);
  });
}

function hopsOnRun(id: string, p: Point, q: Point, uprights: readonly Upright[]): Hop[] {
  const [from, to] = [Math.min(p.x, q.x) + roomPx, Math.max(p.x, q.x) - roomPx];
  const hops: Hop[] = [];
  for (let i = firstFrom(uprights, from); i < uprights.length; i++) {
    const upright = uprights[i];
    if (!upright || upright.x > to) break;
    const { id: other, x, top, bottom } = upright;
    if (other === id || p.y <= top || p.y >= bottom) continue;
    const last = hops.at(-1);
    if (last && x - last.toX < mergePx) hops[hops.length - 1] = { ...last, toX: x };
    else hops.push({ y: p.y, fromX: x, toX: x });
  }
  return hops;
}

/** The first of the uprights, which are sorted, that is not left of `x`. */
function firstFrom(uprights: readonly Upright[], x: number): number {
  let low = 0;
  let high = uprights.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((uprights[middle]?.x ?? x) < x) low = middle + 1;
    else high = middle;
  }
  return low;
}
