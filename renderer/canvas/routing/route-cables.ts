import { flagHeight, flagSpots, flagWidth } from '../cables/flags.ts';
import { cornersOf, isSameLine, lengthOf, type Point, type Rect } from './geometry.ts';
import { buildGrid, fillRect, type Grid, indexOfLine } from './grid.ts';
import { Search } from './search.ts';
import { simpleWay } from './simple-way.ts';
import { type RouteEnd, type Stub, stubOf } from './stub.ts';

/** A cable to be routed: its ends, and the number on its flags, which other cables keep clear of. */
export interface RouteRequest {
  readonly id: string;
  readonly number: string;
  readonly a: RouteEnd;
  readonly b: RouteEnd;
}

/**
 * Orthogonal routes of all cables: out of each port in its direction, clear of cards, each run in a lane of its own,
 * around other cables' flags. The shortest go first; then each is laid anew with all the others in place, as the first
 * ones could not know what would come. Where cards close every way the cable goes straight over them. Cables with a
 * route in `kept` stay where they are: while a unit is dragged only its own cables follow. `hurried` takes the first
 * good way for each, once, so that the drawing keeps up with the mouse; a way that is hard to find goes straight.
 */
export function routeCables(
  cards: readonly Rect[],
  cables: readonly RouteRequest[],
  kept: ReadonlyMap<string, Point[]> = new Map(),
  hurried = false,
): Map<string, Point[]> {
  const grid = buildGrid(
    cards,
    cables.flatMap((c) => [c.a, c.b]),
  );
  const search = hurried ? new Search(grid, 4, hurriedSteps) : new Search(grid, cables.length > 50 ? 1.6 : 1);
  const span = (c: RouteRequest) => Math.abs(c.a.x - c.b.x) + Math.abs(c.a.y - c.b.y);
  const order = cables.filter((c) => !kept.has(c.id)).sort((p, q) => span(p) - span(q) || (p.id < q.id ? -1 : 1));
  const routes = new Map<string, Point[]>();
  for (const cable of cables) routes.set(cable.id, kept.get(cable.id) ?? stubsOnly(grid, cable));
  for (const cable of cables) mark(grid, routes.get(cable.id) ?? [], cable.number, 1);
  // The cable that found another way last: once it is its turn again, and none has since, all would find what they have.
  let lastChanged: RouteRequest | null = null;
  for (let round = 0; round < (hurried ? 1 : roundsFor(order.length)); round++) {
    for (const cable of order) {
      if (lastChanged === cable) return routes;
      const old = routes.get(cable.id) ?? [];
      mark(grid, old, cable.number, -1);
      const route = routeOne(grid, search, cable);
      routes.set(cable.id, route);
      mark(grid, route, cable.number, 1);
      if (!isSameLine(old, route)) lastChanged = cable;
    }
  }
  return routes;
}

/** A search of so many places takes well under a millisecond. */
const hurriedSteps = 1500;

/** Large drawings get fewer rounds: there a cable more or less in its lane matters less than the wait. */
const roundsFor = (cables: number): number => {
  if (cables <= 50) return 3;
  return cables <= 200 ? 2 : 1;
};

function routeOne(grid: Grid, search: Search, cable: RouteRequest): Point[] {
  const from = stubOf(grid, cable.a);
  const to = stubOf(grid, cable.b);
  if (!from || !to) return simpleWay(cable.a, cable.b);
  const found = search.find(from.first, to.first, new Set([...from.places, ...to.places]));
  return found ? cornersOf([cable.a, ...found, cable.b].map(({ x, y }) => ({ x, y }))) : simpleWay(cable.a, cable.b);
}

/** Before anything is laid the ends are already taken: two pieces with a gap, written as one line with a null length between. */
function stubsOnly(grid: Grid, cable: RouteRequest): Point[] {
  const tip = (stub: Stub | null, end: Point): Point =>
    stub ? { x: grid.xs[stub.last.column] ?? end.x, y: grid.ys[stub.last.row] ?? end.y } : end;
  const gap = { x: Number.NaN, y: Number.NaN };
  return [cable.a, tip(stubOf(grid, cable.a), cable.a), gap, tip(stubOf(grid, cable.b), cable.b), cable.b];
}

/** Enters a route and its flags in the grid, or takes them out again. */
function mark(grid: Grid, route: readonly Point[], number: string, by: 1 | -1) {
  route.forEach((p, i) => {
    const before = route[i - 1];
    if (before && !Number.isNaN(before.x) && !Number.isNaN(p.x)) markRun(grid, before, p, by);
  });
  const width = flagWidth(number);
  if (route.some((p) => Number.isNaN(p.x)) || lengthOf(route) === 0) return;
  for (const spot of flagSpots(route, width)) {
    const rect = { x: spot.x - width / 2, y: spot.y - flagHeight / 2, width, height: flagHeight };
    fillRect(grid, grid.flags, rect, 2, by);
  }
}

function markRun(grid: Grid, p: Point, q: Point, by: 1 | -1) {
  const width = grid.xs.length;
  if (p.y === q.y) {
    const row = indexOfLine(grid.ys, p.y);
    const [from, to] = [indexOfLine(grid.xs, Math.min(p.x, q.x)), indexOfLine(grid.xs, Math.max(p.x, q.x))];
    for (let column = from; column <= to; column++) add(grid.along, row * width + column, by);
  } else if (p.x === q.x) {
    const column = indexOfLine(grid.xs, p.x);
    const [from, to] = [indexOfLine(grid.ys, Math.min(p.y, q.y)), indexOfLine(grid.ys, Math.max(p.y, q.y))];
    for (let row = from; row <= to; row++) add(grid.upDown, row * width + column, by);
  }
}

function add(layer: Uint8Array, at: number, by: number) {
  layer[at] = Math.max(0, (layer[at] ?? 0) + by);
}
