import { expect, test } from 'vitest';
import { pathOf } from '../../renderer/canvas/cables/path-of.ts';
import { findHops } from '../../renderer/canvas/routing/hops.ts';

const level = [
  { x: 0, y: 50 },
  { x: 200, y: 50 },
];
const upright = (x: number) => [
  { x, y: 0 },
  { x, y: 100 },
];

test('a straight route is a straight path', () => {
  expect(pathOf(level)).toBe('M0 50L200 50');
});

test('a bend is rounded', () => {
  const path = pathOf([
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 50, y: 50 },
  ]);
  expect(path).toBe('M0 0L42 0Q50 0 50 8L50 50');
});

test('the two conductors of a pair stay as far apart behind a bend as before it', () => {
  const route = [
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 50, y: 50 },
  ];
  expect(pathOf(route, [], 2)).toBe('M0 -2L44 -2Q52 -2 52 6L52 50');
  expect(pathOf(route, [], -2)).toBe('M0 2L40 2Q48 2 48 10L48 50');
});

test('the level cable hops over the upright one, and only it', () => {
  const hops = findHops(
    new Map([
      ['D1', level],
      ['R1', upright(100)],
    ]),
  );
  expect(hops.get('D1')).toEqual([{ y: 50, fromX: 100, toX: 100 }]);
  expect(hops.get('R1')).toEqual([]);
  expect(pathOf(level, hops.get('D1'))).toBe('M0 50L94 50A6 6 0 0 1 100 44A6 6 0 0 1 106 50L200 50');
});

test('cables in neighbouring lanes are hopped over together', () => {
  const hops = findHops(
    new Map([
      ['D1', level],
      ['R1', upright(100)],
      ['R2', upright(109)],
    ]),
  );
  expect(hops.get('D1')).toEqual([{ y: 50, fromX: 100, toX: 109 }]);
});

test('drawn from right to left a hop still goes up', () => {
  const path = pathOf([...level].reverse(), [{ y: 50, fromX: 100, toX: 100 }]);
  expect(path).toBe('M200 50L106 50A6 6 0 0 0 100 44A6 6 0 0 0 94 50L0 50');
});

test('a cable that ends where another one passes does not hop', () => {
  const hops = findHops(
    new Map([
      ['D1', level],
      ['R1', upright(200)],
    ]),
  );
  expect(hops.get('D1')).toEqual([]);
});
