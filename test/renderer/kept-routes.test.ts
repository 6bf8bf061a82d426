import { expect, test } from 'vitest';
import { keptLines, keptRoutes, type Layout } from '../../renderer/canvas/routing/kept-routes.ts';
import type { RouteRequest } from '../../renderer/canvas/routing/route-cables.ts';

const card = (x: number, y: number) => ({ x, y, width: 100, height: 100 });
const cable = (id: string, y: number): RouteRequest => ({
  id,
  number: id,
  a: { x: 100, y, side: 'right' },
  b: { x: 300, y, side: 'left' },
});
const before: Layout = { cards: [card(0, 0), card(300, 0)], requests: [cable('D1', 30), cable('D2', 60)] };
const routes = new Map(
  before.requests.map(({ id, a, b }) => [
    id,
    [
      { x: a.x, y: a.y },
      { x: b.x, y: b.y },
    ],
  ]),
);

test('where nothing changed every route stays', () => {
  expect([...keptRoutes(before, before, routes).keys()]).toEqual(['D1', 'D2']);
});

test('a cable with an end elsewhere, and a new one, are routed', () => {
  const requests = [cable('D1', 31), cable('D2', 60), cable('D3', 90)];
  expect([...keptRoutes(before, { ...before, requests }, routes).keys()]).toEqual(['D2']);
});

test('a card put on a cable makes it give way', () => {
  const cards = [...before.cards, { x: 160, y: 50, width: 60, height: 60 }];
  expect([...keptRoutes(before, { ...before, cards }, routes).keys()]).toEqual(['D1']);
});

test('a cable that goes where it went keeps its line, the same object, and another one gets its new line', () => {
  const found = new Map(
    [...routes].map(([id, [p, q]]) => [id, id === 'D1' ? [{ ...p! }, { ...q! }] : [p!, { ...q!, x: 310 }]]),
  );
  const lines = keptLines(routes, found);
  expect(lines.get('D1')).toBe(routes.get('D1'));
  expect(lines.get('D2')).toBe(found.get('D2'));
});
