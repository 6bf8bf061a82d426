import { expect, test } from 'vitest';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { createStation, edit, placeUnit, type Unit } from '../../core/index.ts';
import { copyUnits } from '../../renderer/app/editing/copy-units.ts';

function paddleAndKeyer() {
  let station = edit(createStation(), placeUnit(createStation(), 'paddle', { x: 0, y: 0 }));
  station = edit(station, placeUnit(station, 'keyer', { x: 180, y: 0 }));
  return edit(station, layCable(station, { unit: 'paddle', port: 'out' }, { unit: 'keyer', port: 'paddle' }));
}

test('copies in the same station get free ids, names and numbers, and the cable between them', () => {
  const station = paddleAndKeyer();
  const { units, cables } = copyUnits(station, ['paddle', 'keyer'], station);
  expect(units.map((u) => [u.id, u.name, u.position])).toEqual([
    ['paddle-2', 'Paddle 2', { x: 36, y: 36 }],
    ['keyer-2', 'Keyer 2', { x: 216, y: 36 }],
  ]);
  expect(cables).toMatchObject([{ number: 'K2', a: { unit: 'paddle-2' }, b: { unit: 'keyer-2' } }]);
});

test('a cable to a unit that is not copied stays behind', () => {
  const station = paddleAndKeyer();
  expect(copyUnits(station, ['paddle'], station).cables).toEqual([]);
});

test('in another station names that are free there are kept', () => {
  const { units, cables } = copyUnits(paddleAndKeyer(), ['paddle', 'keyer'], createStation());
  expect(units.map((u) => u.name)).toEqual(['Paddle', 'Keyer']);
  expect(cables.map((c) => c.number)).toEqual(['K1']);
});

test('a name that ends in more digits than can be counted is copied, and an id is not longer than ids are', () => {
  const name = 'Paddle 99999999999999999';
  const station = edit(paddleAndKeyer(), { type: 'updateUnit', id: 'paddle', set: { name } });
  expect(copyUnits(station, ['paddle'], station).units.map((u) => u.name)).toEqual([`${name} 2`]);
  const long = { ...station.units[0], id: 'x'.repeat(80) } as Unit;
  const from = { ...station, units: [long], cables: [] };
  expect(copyUnits(from, [long.id], from).units.map((u) => u.id)).toEqual([`${'x'.repeat(78)}-2`]);
});
