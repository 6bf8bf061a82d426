import type { Station } from '../../core/index.ts';
import { drawingStore } from './drawing-store.ts';
import { layoutOf } from './layout.ts';
import type { Rect } from './routing/geometry.ts';

/** What the cards and the cables around them cover; null for an empty sheet. */
export function drawnBounds(station: Station): Rect | null {
  const { cards } = layoutOf(station, new Map());
  if (cards.length === 0) return null;
  const cables = [...drawingStore.getState().routes.values()].flat();
  const xs = [...cards.flatMap((c) => [c.x, c.x + c.width]), ...cables.map((p) => p.x)];
  const ys = [...cards.flatMap((c) => [c.y, c.y + c.height]), ...cables.map((p) => p.y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
