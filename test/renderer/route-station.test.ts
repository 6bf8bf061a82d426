import { expect, test } from 'vitest';
import { edit } from '../../core/index.ts';
import { drawingStore, routeStation } from '../../renderer/canvas/drawing-store.ts';
import { layoutOf } from '../../renderer/canvas/layout.ts';
import { routeCables } from '../../renderer/canvas/routing/route-cables.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const [first] = hut.units;
const nowhere = new Map();
const routes = () => drawingStore.getState().routes;

const movedBy = (x: number, y: number) => {
  if (!first) throw new Error('the hut has units');
  const position = { x: first.position.x + x, y: first.position.y + y };
  return {
    at: new Map([[first.id, position]]),
    station: edit(hut, { type: 'moveUnits', moves: [{ id: first.id, position }] }),
  };
};

test('undo and redo bring back the routes that were there', () => {
  routeStation(hut, nowhere);
  const before = routes();
  expect([...before]).toEqual([...routeCables(layoutOf(hut, nowhere).cards, layoutOf(hut, nowhere).requests)]);
  const { station } = movedBy(-216, 126);
  routeStation(station, nowhere);
  const after = routes();
  expect([...after]).not.toEqual([...before]);
  routeStation(hut, nowhere);
  expect(routes()).toBe(before);
  routeStation(station, nowhere);
  expect(routes()).toBe(after);
});

test('a drag that is given up leaves the routes as they were', () => {
  routeStation(hut, nowhere);
  const before = routes();
  routeStation(hut, movedBy(45, 45).at);
  expect(routes()).not.toBe(before);
  routeStation(hut, nowhere);
  expect(routes()).toBe(before);
});

test('an edit that moves nothing keeps the routes, and so does its undo', () => {
  routeStation(hut, nowhere);
  const before = routes();
  const retitled = edit(hut, { type: 'describe', set: { title: 'Attic' } });
  routeStation(retitled, nowhere);
  expect(routes()).toBe(before);
  routeStation(movedBy(-216, 126).station, nowhere);
  routeStation(retitled, nowhere);
  expect(routes()).toBe(before);
});
