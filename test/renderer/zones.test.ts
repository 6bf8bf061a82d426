import { expect, test } from 'vitest';
import { createStation } from '../../core/index.ts';
import type { Card } from '../../renderer/canvas/paper/arrange.ts';
import { unitsInZones, zoneAround } from '../../renderer/canvas/paper/zones.ts';

const card = (id: string, x: number, y: number): Card => ({ id, x, y, width: 100, height: 50 });
const zone = (id: string, x: number, width: number) =>
  ({ id, type: 'zone', text: id, position: { x, y: 0 }, width, height: 300 }) as const;

test('a unit is in the zone that its middle is in, in the smaller one where zones overlap', () => {
  const note = { ...zone('note', 0, 900), type: 'note' } as const;
  const station = { ...createStation(), marks: [zone('room', 0, 900), zone('desk', 0, 300), note] };
  const cards = [card('key', 10, 10), card('edge', 260, 10), card('lamp', 500, 10), card('mast', 2000, 10)];
  const found = Object.fromEntries(unitsInZones(station, cards).map((z) => [z.zone.id, z.units]));
  expect(found).toEqual({ desk: ['key'], room: ['edge', 'lamp'] });
});

test('a zone fits around cards with free paper on every side', () => {
  expect(zoneAround([card('a', 100, 100), card('b', 300, 400)])).toEqual({ x: 46, y: 46, width: 408, height: 458 });
  expect(zoneAround([])).toBeNull();
});
