import { expect, onTestFinished, test } from 'vitest';
import { CostQueue } from '../../renderer/canvas/routing/cost-queue.ts';
import type { Point, Rect } from '../../renderer/canvas/routing/geometry.ts';
import { buildGrid } from '../../renderer/canvas/routing/grid.ts';
import { type RouteRequest, routeCables } from '../../renderer/canvas/routing/route-cables.ts';

const left: Rect = { x: 0, y: 0, width: 108, height: 180 };
const right: Rect = { x: 324, y: 0, width: 108, height: 180 };
const between: Rect = { x: 180, y: -36, width: 54, height: 144 };

const across = (id: string, fromY: number, toY: number): RouteRequest => ({
  id,
  number: id,
  a: { x: 108, y: fromY, side: 'right' },
  b: { x: 324, y: toY, side: 'left' },
});

const runs = (points: readonly Point[]) => points.slice(1).map((q, i) => [points[i] as Point, q] as const);

const inside = (card: Rect, [p, q]: readonly [Point, Point], by: number) =>
  Math.max(p.x, q.x) > card.x - by &&
  Math.min(p.x, q.x) < card.x + card.width + by &&
  Math.max(p.y, q.y) > card.y - by &&
  Math.min(p.y, q.y) < card.y + card.height + by;

/** Pixels that two routes run on top of each other. */
function shared(one: readonly Point[], other: readonly Point[]): number {
  let sum = 0;
  for (const [p, q] of runs(one)) {
    for (const [r, s] of runs(other)) {
      if (p.y === q.y && r.y === s.y && p.y === r.y) sum += overlap(p.x, q.x, r.x, s.x);
      if (p.x === q.x && r.x === s.x && p.x === r.x) sum += overlap(p.y, q.y, r.y, s.y);
    }
  }
  return sum;
}

const overlap = (a: number, b: number, c: number, d: number) =>
  Math.max(0, Math.min(Math.max(a, b), Math.max(c, d)) - Math.max(Math.min(a, b), Math.min(c, d)));

test('ports that face each other are joined by a straight line', () => {
  const routes = routeCables([left, right], [across('D1', 45, 45)]);
  expect(routes.get('D1')).toEqual([
    { x: 108, y: 45 },
    { x: 324, y: 45 },
  ]);
});

test('a cable leaves each port in its direction and keeps clear of cards', () => {
  const cards = [left, between, right];
  const route = routeCables(cards, [across('D1', 45, 72)]).get('D1') as Point[];
  const [first, second] = route;
  const [last, beforeLast] = [route.at(-1), route.at(-2)];
  expect(first).toEqual({ x: 108, y: 45 });
  expect(last).toEqual({ x: 324, y: 72 });
  expect(second?.y).toBe(45);
  expect(second?.x).toBeGreaterThan(108);
  expect(beforeLast?.y).toBe(72);
  expect(beforeLast?.x).toBeLessThan(324);
  for (const run of runs(route)) {
    expect(run[0].x === run[1].x || run[0].y === run[1].y).toBe(true);
    expect(inside(between, run, 4)).toBe(false);
  }
});

test('a port on the far side is reached around the card', () => {
  const cable: RouteRequest = {
    id: 'R1',
    number: 'R1',
    a: { x: 0, y: 45, side: 'left' },
    b: { x: 432, y: 45, side: 'right' },
  };
  const route = routeCables([left, right], [cable]).get('R1') as Point[];
  expect(route[1]?.x).toBeLessThan(0);
  for (const run of runs(route).slice(1, -1)) {
    expect(inside(left, run, 4)).toBe(false);
    expect(inside(right, run, 4)).toBe(false);
  }
});

test('cables that share a channel each have a lane of their own', () => {
  const cables = [
    across('D1', 45, 153),
    across('D2', 72, 126),
    across('D3', 99, 72),
    across('D4', 126, 99),
    across('D5', 153, 45),
  ];
  const routes = [...routeCables([left, right], cables).values()];
  routes.forEach((one, i) => {
    for (const other of routes.slice(i + 1)) expect(shared(one, other)).toBe(0);
  });
});

test('no cable runs over another one’s flag', () => {
  const cables = [across('D1', 45, 153), across('D2', 72, 45), across('D3', 99, 72)];
  const routes = routeCables([left, right], cables);
  const flagOfD1: Rect = { x: 117, y: 38, width: 20, height: 14 };
  for (const id of ['D2', 'D3']) {
    for (const run of runs(routes.get(id) ?? [])) expect(inside(flagOfD1, run, 0)).toBe(false);
  }
});

test('units off the grid are met at their ports all the same', () => {
  const cable: RouteRequest = {
    id: 'K1',
    number: 'K1',
    a: { x: 108, y: 47.5, side: 'right' },
    b: { x: 331, y: 81, side: 'left' },
  };
  const route = routeCables([left, { ...right, x: 331 }], [cable]).get('K1') as Point[];
  expect(route[0]).toEqual({ x: 108, y: 47.5 });
  expect(route.at(-1)).toEqual({ x: 331, y: 81 });
  expect(route).toHaveLength(4);
});

test('where cards close every way the cable is drawn over them', () => {
  const touching: Rect = { x: 108, y: 0, width: 108, height: 180 };
  const cable: RouteRequest = {
    id: 'D1',
    number: 'D1',
    a: { x: 108, y: 45, side: 'right' },
    b: { x: 432, y: 45, side: 'right' },
  };
  const route = routeCables([left, touching, right], [cable]).get('D1') as Point[];
  expect(route[0]).toEqual({ x: 108, y: 45 });
  expect(route.at(-1)).toEqual({ x: 432, y: 45 });
});

test('the order of the cables changes nothing', () => {
  const cables = [across('D1', 45, 153), across('D2', 72, 45), across('D3', 99, 72)];
  const there = routeCables([left, right], cables);
  const back = routeCables([left, right], [...cables].reverse());
  for (const cable of cables) expect(back.get(cable.id)).toEqual(there.get(cable.id));
});

test('of sixty units with a hundred and twenty cables criss-cross each is found without a look at most of the drawing', () => {
  const cards = Array.from({ length: 60 }, (_, i) => ({
    x: (i % 10) * 252,
    y: Math.floor(i / 10) * 234,
    width: 126,
    height: 126,
  }));
  const cables = Array.from({ length: 120 }, (_, i): RouteRequest => {
    const from = cards[(i * 7) % 60] as Rect;
    const to = cards[(i * 13 + 5) % 60] as Rect;
    const row = 45 + (i % 3) * 27;
    return {
      id: `C${i}`,
      number: `C${i}`,
      a: { x: from.x + 126, y: from.y + row, side: 'right' },
      b: { x: to.x, y: to.y + row, side: 'left' },
    };
  });
  const { pop } = CostQueue.prototype;
  let looks = 0;
  onTestFinished(() => {
    CostQueue.prototype.pop = pop;
  });
  CostQueue.prototype.pop = function () {
    looks++;
    return pop.call(this);
  };
  expect(routeCables(cards, cables).size).toBe(120);
  const { xs, ys } = buildGrid(
    cards,
    cables.flatMap((c) => [c.a, c.b]),
  );
  // Each cable is laid twice, on a grid of places that it passes along or up and down. Without a sense of direction a
  // search looks at half of them.
  const share = looks / (2 * cables.length) / (2 * xs.length * ys.length);
  expect(share).toBeGreaterThan(0);
  expect(share).toBeLessThan(0.25);
});

test('units at opposite ends of the widest paper are joined like others, not with a lane for every pixel between', () => {
  const far = 1_000_000;
  const away: Rect = { ...right, x: far, y: -far };
  const cable: RouteRequest = {
    ...across('D1', 45, 0),
    b: { x: far, y: 45 - far, side: 'left' },
  };
  const route = routeCables([left, away], [cable]).get('D1') as Point[];
  expect([route[0], route.at(-1)]).toEqual([
    { x: 108, y: 45 },
    { x: far, y: 45 - far },
  ]);
  for (const [p, q] of runs(route)) expect(p.x === q.x || p.y === q.y).toBe(true);
  expect(route.length).toBeLessThanOrEqual(6);
});
