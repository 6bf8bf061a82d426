import { expect, test } from 'vitest';
import { flagSpots, flagWidth } from '../../renderer/canvas/cables/flags.ts';
import { pillSpot } from '../../renderer/canvas/cables/pill-spot.ts';

const line = (length: number) => [
  { x: 0, y: 0 },
  { x: length, y: 0 },
];

test('a long cable has a flag behind each port, clear of the ports’ faces', () => {
  const spots = flagSpots(line(300), 20);
  expect(spots).toEqual([
    { x: 19, y: 0 },
    { x: 281, y: 0 },
  ]);
});

test('a short cable has one flag in its middle', () => {
  expect(flagSpots(line(90), 20)).toEqual([{ x: 45, y: 0 }]);
});

test('a longer number has a wider flag', () => {
  expect(flagWidth('R12')).toBeGreaterThan(flagWidth('R1'));
});

test('a pill lies on the longest run, away from the flags', () => {
  const route = [
    { x: 0, y: 0 },
    { x: 60, y: 0 },
    { x: 60, y: 200 },
    { x: 120, y: 200 },
  ];
  expect(pillSpot(route, flagSpots(route, 20))).toEqual({ x: 60, y: 100 });
});

test('on a cable without room for it a pill lies above', () => {
  const spot = pillSpot(line(60), flagSpots(line(60), 20));
  expect(spot.y).toBeLessThan(0);
});
