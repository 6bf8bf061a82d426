import { describe, expect, it } from 'vitest';
import { alignCards, type Card, spaceCards } from '../../renderer/canvas/paper/arrange.ts';

const card = (id: string, x: number, y: number, width = 90, height = 54): Card => ({ id, x, y, width, height });
const placed = (cards: readonly Card[], moves: readonly { id: string; position: { x: number; y: number } }[]) =>
  Object.fromEntries(cards.map((c) => [c.id, moves.find((m) => m.id === c.id)?.position ?? { x: c.x, y: c.y }]));

describe('cards in line', () => {
  const cards = [card('a', 0, 18), card('b', 180, 90, 126, 90), card('c', 90, 0, 54, 36)];
  it.each([
    ['left', { a: [0, 18], b: [0, 90], c: [0, 0] }],
    ['right', { a: [216, 18], b: [180, 90], c: [252, 0] }],
    ['centre', { a: [108, 18], b: [90, 90], c: [126, 0] }],
    ['top', { a: [0, 0], b: [180, 0], c: [90, 0] }],
    ['bottom', { a: [0, 126], b: [180, 90], c: [90, 144] }],
    ['middle', { a: [0, 63], b: [180, 45], c: [90, 72] }],
  ] as const)('%s', (how, expected) => {
    const at = placed(cards, alignCards(cards, how));
    expect(Object.fromEntries(Object.entries(at).map(([id, p]) => [id, [p.x, p.y]]))).toEqual(expected);
  });
  it('moves no card that is in line already', () => {
    expect(alignCards([card('a', 0, 0), card('b', 0, 90)], 'left')).toEqual([]);
  });
});

describe('equal gaps', () => {
  it('leaves the outermost cards and spaces the rest, in their order on the paper', () => {
    const cards = [card('far', 540, 0), card('near', 0, 0), card('middle', 99, 0, 180)];
    // 630 wide in all, 360 of it cards: two gaps of 135.
    expect(spaceCards(cards, 'across')).toEqual([{ id: 'middle', position: { x: 225, y: 0 } }]);
  });
  it('works downwards, and two cards have nothing to space', () => {
    const cards = [card('a', 0, 0), card('b', 0, 60), card('c', 0, 360)];
    // 414 high, 162 of it cards: two gaps of 126.
    expect(spaceCards(cards, 'down')).toEqual([{ id: 'b', position: { x: 0, y: 180 } }]);
    expect(spaceCards(cards.slice(0, 2), 'down')).toEqual([]);
  });
});
