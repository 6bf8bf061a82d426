import { gridPx } from '../cards/card-size.ts';
import type { Point, Rect } from '../routing/geometry.ts';

export const alignments = ['left', 'centre', 'right', 'top', 'middle', 'bottom'] as const;
export type Alignment = (typeof alignments)[number];

/** A card on the paper with the id of its unit. */
export type Card = Rect & { readonly id: string };
export interface Move {
  readonly id: string;
  readonly position: Point;
}

/** The moves that put cards in line: with the outermost one's edge, or with the middle of all. */
export function alignCards(cards: readonly Card[], how: Alignment): Move[] {
  const [x, y] = [Math.min(...cards.map((c) => c.x)), Math.min(...cards.map((c) => c.y))];
  const right = Math.max(...cards.map((c) => c.x + c.width));
  const bottom = Math.max(...cards.map((c) => c.y + c.height));
  const placeOf: Record<Alignment, (card: Card) => Point> = {
    left: (c) => ({ x, y: c.y }),
    centre: (c) => ({ x: (x + right - c.width) / 2, y: c.y }),
    right: (c) => ({ x: right - c.width, y: c.y }),
    top: (c) => ({ x: c.x, y }),
    middle: (c) => ({ x: c.x, y: (y + bottom - c.height) / 2 }),
    bottom: (c) => ({ x: c.x, y: bottom - c.height }),
  };
  return movesTo(cards, placeOf[how]);
}

/** The moves that leave equal gaps between cards; the outermost ones stay. Gaps are whole steps of half the grid, so cables still meet their ports. */
export function spaceCards(cards: readonly Card[], way: 'across' | 'down'): Move[] {
  const [at, size] = way === 'across' ? (['x', 'width'] as const) : (['y', 'height'] as const);
  const sorted = [...cards].sort((a, b) => a[at] - b[at]);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last || sorted.length < 3) return [];
  const taken = sorted.reduce((sum, c) => sum + c[size], 0);
  const gap = (last[at] + last[size] - first[at] - taken) / (sorted.length - 1);
  const places = new Map<string, number>();
  let next = first[at];
  for (const card of sorted) {
    places.set(card.id, next);
    next += card[size] + gap;
  }
  return movesTo(sorted, (c) => ({ x: c.x, y: c.y, [at]: c === last ? c[at] : (places.get(c.id) ?? c[at]) }));
}

function movesTo(cards: readonly Card[], placeOf: (card: Card) => Point): Move[] {
  return cards
    .map((card) => ({ id: card.id, position: onHalves(placeOf(card)), card }))
    .filter(({ position, card }) => position.x !== card.x || position.y !== card.y)
    .map(({ id, position }) => ({ id, position }));
}

const onHalves = ({ x, y }: Point): Point => ({ x: halves(x), y: halves(y) });
const halves = (value: number): number => Math.round(value / (gridPx / 2)) * (gridPx / 2);
