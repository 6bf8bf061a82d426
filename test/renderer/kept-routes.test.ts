import { expect, test } from 'vitest';
import { keptRoutes, type Layout } from '../../renderer/canvas/routing/kept-routes.ts';
import type { RouteRequest } from '../../renderer/canvas/routing/route.ts';

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
