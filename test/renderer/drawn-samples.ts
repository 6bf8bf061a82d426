import type { Station } from '../../core/index.ts';
import { flagHeight, flagSpots, flagWidth } from '../../renderer/canvas/cables/flags.ts';
import { layoutOf } from '../../renderer/canvas/layout.ts';
import type { Point, Rect } from '../../renderer/canvas/routing/geometry.ts';
import { type RouteRequest, routeCables } from '../../renderer/canvas/routing/route-cables.ts';
import { sample, sampleNames } from '../stations/samples.ts';

/** A station as it is drawn. */
export interface Drawn {
  readonly cards: readonly Rect[];
  readonly requests: readonly RouteRequest[];
  readonly routes: ReadonlyMap<string, Point[]>;
}

/** Every sample that ships, by its name. */
export const samples = sampleNames.map((name): [string, Station] => [name, sample(name)]);

export function draw(station: Station): Drawn {
  const { cards, requests } = layoutOf(station, new Map());
  return { cards, requests, routes: routeCables(cards, requests) };
}

export type Run = readonly [Point, Point];

export const runsOf = (route: readonly Point[]): Run[] => route.slice(1).map((q, i) => [route[i] as Point, q] as const);

/** Whether a run goes through the inside of a box, its edge apart. */
export const isThrough = ([p, q]: Run, box: Rect): boolean =>
  Math.max(p.x, q.x) > box.x &&
  Math.min(p.x, q.x) < box.x + box.width &&
  Math.max(p.y, q.y) > box.y &&
  Math.min(p.y, q.y) < box.y + box.height;

/** Pixels that two runs lie on top of each other. */
export function shared([p, q]: Run, [r, s]: Run): number {
  if (p.y === q.y && r.y === s.y && p.y === r.y) return overlap(p.x, q.x, r.x, s.x);
  return p.x === q.x && r.x === s.x && p.x === r.x ? overlap(p.y, q.y, r.y, s.y) : 0;
}

const overlap = (a: number, b: number, c: number, d: number): number =>
  Math.max(0, Math.min(Math.max(a, b), Math.max(c, d)) - Math.max(Math.min(a, b), Math.min(c, d)));

/** The boxes of a cable's flags. */
export function flagsOf(number: string, route: readonly Point[]): Rect[] {
  const width = flagWidth(number);
  return flagSpots(route, width).map(({ x, y }) => ({
    x: x - width / 2,
    y: y - flagHeight / 2,
    width,
    height: flagHeight,
  }));
}

export const overlaps = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
