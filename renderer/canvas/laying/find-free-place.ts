import { gridPx } from '../cards/card-size.ts';
import type { Point, Rect } from '../routing/geometry.ts';

/** Room for cables and their flags between cards. */
const apartPx = 72;

/**
 * The first free place for a card in view, column by column from the upper left, on the grid and with room for cables
 * around it. Where the view is full, the place is below it.
 */
export function findFreePlace(cards: readonly Rect[], view: Rect, width: number, height: number): Point {
  const onGrid = (value: number) => Math.ceil(value / gridPx) * gridPx;
  const left = onGrid(view.x + 36);
  const top = onGrid(view.y + 36);
  const step = gridPx * 2;
  for (let x = left; x + width < view.x + view.width - 18; x += step) {
    for (let y = top; y + height < view.y + view.height - 18; y += step) {
      if (!cards.some((card) => tooNear(card, { x, y, width, height }))) return { x, y };
    }
  }
  const lowest = Math.max(view.y, ...cards.map((c) => c.y + c.height));
  return { x: left, y: onGrid(lowest + apartPx) };
}

const tooNear = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.width + apartPx &&
  b.x < a.x + a.width + apartPx &&
  a.y < b.y + b.height + 36 &&
  b.y < a.y + a.height + 36;
