import { splitCable } from '../../../core/index.ts';
import { currentStation } from '../../store/document.ts';
import { placeBy, placing } from '../../store/place-kind.ts';
import { onGrid } from '../cards/card-size.ts';
import { drawingStore } from '../drawing-store.ts';
import type { Point } from '../routing/geometry.ts';

/** A cable is meant when something is dropped so near to it. */
const nearPx = 14;

/** The id of the cable that runs through or beside a point of the paper. */
export function cableAt(point: Point): string | undefined {
  for (const [id, route] of drawingStore.getState().routes) {
    const isNear = route.some((q, i) => {
      const p = route[i - 1];
      return p !== undefined && apart(point.x, p.x, q.x) + apart(point.y, p.y, q.y) <= nearPx;
    });
    if (isNear) return id;
  }
  return undefined;
}

/** How far a value is outside the span of two others. */
const apart = (value: number, one: number, other: number): number =>
  Math.max(0, Math.min(one, other) - value, value - Math.max(one, other));

/** Sets a unit of the shelf down where it was dropped: into the cable there if the cable goes through it. */
export function placeDropped(kindId: string, point: Point) {
  const before = currentStation();
  const position = onGrid({ x: point.x - 54, y: point.y - 14 });
  const placed = placing(before, kindId, position);
  const cableId = cableAt(point);
  const cable = before.cables.find((c) => c.id === cableId);
  placeBy((cable && splitCable(before, cable.id, placed)) || placed);
}
