import { describe, expect, it } from 'vitest';
import type { Card } from '../../renderer/canvas/paper/arrange.ts';
import { settle } from '../../renderer/canvas/paper/settle.ts';

const card = (id: string, x: number, y: number): Card => ({ id, x, y, width: 90, height: 54 });
const at = (id: string, x: number, y: number) => ({ id, position: { x, y } });
const all = () => true;

describe('a layout set among cards', () => {
  it('begins where its cards began', () => {
    const cards = [card('a', 500, 400), card('b', 700, 300)];
    expect(settle(cards, [at('a', 0, 0), at('b', 200, 0)], all)).toEqual([at('a', 500, 300), at('b', 700, 300)]);
  });
  it('lies around the cards that stay, and does not move them', () => {
    const cards = [card('stays', 400, 400), card('goes', 0, 0)];
    const moves = settle(cards, [at('stays', 100, 100), at('goes', 300, 100)], (id) => id === 'goes');
    expect(moves).toEqual([at('goes', 600, 400)]);
  });
  it('goes down where a card that stays is in the way, with room for cables', () => {
    const cards = [card('stays', 0, 0), card('goes', 0, 0)];
    const [move] = settle(cards, [at('goes', 0, 0)], (id) => id === 'goes');
    expect(move?.position).toEqual({ x: 0, y: 54 + 36 });
  });
});
