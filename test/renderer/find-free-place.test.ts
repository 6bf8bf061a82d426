import { expect, test } from 'vitest';
import { findFreePlace } from '../../renderer/canvas/laying/find-free-place.ts';

const view = { x: 0, y: 0, width: 700, height: 500 };

test('the first unit lies in the upper left of what is in view, on the grid', () => {
  const place = findFreePlace([], view, 144, 108);
  expect(place).toEqual({ x: 36, y: 36 });
});

test('units placed one after another never overlap and keep room for cables', () => {
  const cards: { x: number; y: number; width: number; height: number }[] = [];
  for (let i = 0; i < 12; i++) cards.push({ ...findFreePlace(cards, view, 144, 108), width: 144, height: 108 });
  cards.forEach((a, i) => {
    expect([a.x % 18, a.y % 18]).toEqual([0, 0]);
    for (const b of cards.slice(i + 1)) {
      expect(
        a.x + a.width + 36 <= b.x ||
          b.x + b.width + 36 <= a.x ||
          a.y + a.height + 36 <= b.y ||
          b.y + b.height + 36 <= a.y,
      ).toBe(true);
    }
  });
});
