import { describe, expect, it } from 'vitest';
import { guidesOf, pullOf } from '../../renderer/canvas/paper/guides.ts';

describe('snapping to a straight cable', () => {
  const across = (own: number, other: number) =>
    ({ own: { x: 0, y: own }, other: { x: 200, y: other }, way: 'across' }) as const;
  it('shifts by the nearest port that is at most half a grid step away', () => {
    expect(pullOf([across(50, 57), across(80, 76)])).toEqual({ x: 0, y: -4 });
    expect(pullOf([across(50, 59)])).toEqual({ x: 0, y: 9 });
  });
  it('leaves a card that is far from straight, or whose cable turns a corner', () => {
    expect(pullOf([across(50, 60)])).toEqual({ x: 0, y: 0 });
    expect(pullOf([{ own: { x: 0, y: 0 }, other: { x: 3, y: 3 }, way: 'bent' }])).toEqual({ x: 0, y: 0 });
    expect(pullOf([])).toEqual({ x: 0, y: 0 });
  });
  it('shifts across for ports that look up and down', () => {
    expect(pullOf([{ own: { x: 10, y: 0 }, other: { x: 7, y: 90 }, way: 'down' }])).toEqual({ x: -3, y: 0 });
  });
});

describe('guides', () => {
  const card = { x: 100, y: 100, width: 80, height: 40 };
  it('run along edges and middles that are in line, from one card to the other', () => {
    const below = { x: 100, y: 300, width: 40, height: 20 };
    expect(guidesOf(card, [card, below])).toEqual([
      { from: { x: 100, y: 100 }, to: { x: 100, y: 320 } },
      // The middle of the dragged card is in line with the other one's right edge.
      { from: { x: 140, y: 100 }, to: { x: 140, y: 320 } },
    ]);
  });
  it('are drawn to the nearest card, and not at all where nothing is in line', () => {
    const near = { x: 300, y: 100, width: 50, height: 31 };
    const far = { x: 900, y: 100, width: 50, height: 33 };
    expect(guidesOf(card, [far, near])).toEqual([{ from: { x: 100, y: 100 }, to: { x: 350, y: 100 } }]);
    expect(guidesOf(card, [{ x: 301, y: 211, width: 53, height: 37 }])).toEqual([]);
  });
});
