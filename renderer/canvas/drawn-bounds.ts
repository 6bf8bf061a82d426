import type { Station } from '../../core/index.ts';
import { drawingStore } from './drawing-store.ts';
import { cardsOf } from './layout.ts';
import { boundsOf, type Rect } from './routing/geometry.ts';

/** What the cards, the cables around them, notes and zones cover; null for an empty sheet. */
export function drawnBounds(station: Station): Rect | null {
  const routes = [...drawingStore.getState().routes.values()].flat();
  const marks = (station.marks ?? []).map(({ position, width, height }) => ({ ...position, width, height }));
  return boundsOf([...cardsOf(station), ...marks, ...routes.map(({ x, y }) => ({ x, y, width: 0, height: 0 }))]);
}
