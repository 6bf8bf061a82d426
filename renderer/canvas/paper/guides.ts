import { gridPx } from '../cards/card-size.ts';
import type { Point, Rect } from '../routing/geometry.ts';

/** A line that shows what a dragged card is in line with. */
export interface Guide {
  readonly from: Point;
  readonly to: Point;
}

/** A cable of the dragged card: its own port, and the one at the other end, both on the paper. */
export interface Pull {
  readonly own: Point;
  readonly other: Point;
  /** The way its ports look: both across, both up and down, or neither. */
  readonly way: 'across' | 'down' | 'bent';
}

const snapPx = gridPx / 2;

/** How far to shift a dragged card so that a cable of its runs straight: the nearest one within half a grid step. */
export function pullOf(pulls: readonly Pull[]): Point {
  const nearest = (way: Pull['way'], offset: (pull: Pull) => number): number => {
    const offsets = pulls.filter((p) => p.way === way).map(offset);
    const near = offsets.filter((o) => Math.abs(o) <= snapPx).sort((a, b) => Math.abs(a) - Math.abs(b));
    return near[0] ?? 0;
  };
  return { x: nearest('down', (p) => p.other.x - p.own.x), y: nearest('across', (p) => p.other.y - p.own.y) };
}

/** Lines through edges and middles that a card has in common with others: the nearest of each, at most one for every edge or middle. */
export function guidesOf(card: Rect, others: readonly Rect[]): Guide[] {
  const guides: Guide[] = [];
  for (const share of [0, 0.5, 1]) {
    const x = card.x + share * card.width;
    const above = nearestOf(
      others,
      card,
      (o) => linesOf(o.x, o.width).includes(x),
      (o) => Math.abs(o.y - card.y),
    );
    if (above)
      guides.push({
        from: { x, y: Math.min(card.y, above.y) },
        to: { x, y: Math.max(card.y + card.height, above.y + above.height) },
      });
    const y = card.y + share * card.height;
    const beside = nearestOf(
      others,
      card,
      (o) => linesOf(o.y, o.height).includes(y),
      (o) => Math.abs(o.x - card.x),
    );
    if (beside)
      guides.push({
        from: { x: Math.min(card.x, beside.x), y },
        to: { x: Math.max(card.x + card.width, beside.x + beside.width), y },
      });
  }
  return guides;
}

const linesOf = (from: number, size: number): number[] => [from, from + size / 2, from + size];

function nearestOf(
  others: readonly Rect[],
  card: Rect,
  fits: (other: Rect) => boolean,
  distance: (other: Rect) => number,
): Rect | undefined {
  let best: Rect | undefined;
  for (const other of others) {
    if (other === card || !fits(other)) continue;
    if (!best || distance(other) < distance(best)) best = other;
  }
  return best;
}
