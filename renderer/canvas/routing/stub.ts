import { type Facing, type Point, stepOf } from './geometry.ts';
import { type Grid, indexOfLine, lanePx } from './grid.ts';
import type { Stop } from './search.ts';

/** Where a cable comes out of a card. */
export interface RouteEnd extends Point {
  readonly side: Facing;
}

/** A stub this long has room for a flag. */
const stubPx = lanePx * 4;

/**
 * The first stop of a cable: straight out of its port, as far as a flag needs, or half the way to the next card where
 * that is nearer, so that two ports that face each other both get out. Null where a card stands right at the port.
 */
export function stubOf(grid: Grid, end: RouteEnd): Stop | null {
  const step = stepOf[end.side];
  const along = step.x !== 0;
  const lines = along ? grid.xs : grid.ys;
  const column = indexOfLine(grid.xs, end.x);
  const row = indexOfLine(grid.ys, end.y);
  const direction = along ? step.x : step.y;
  const from = along ? end.x : end.y;
  const placeAt = (index: number) => (along ? row * grid.xs.length + index : index * grid.xs.length + column);
  let index = along ? column : row;
  // Out of the port's own card first.
  do index += direction;
  while (index >= 0 && index < lines.length && Math.abs((lines[index] ?? 0) - from) < lanePx);
  if (grid.blocked[placeAt(index)]) return null;
  let free = index;
  while (Math.abs((lines[free] ?? from) - from) < stubPx * 2 && !grid.blocked[placeAt(free + direction)])
    free += direction;
  const room = Math.abs((lines[free] ?? from) - from);
  const wanted = room >= stubPx * 2 ? stubPx : Math.max(lanePx, room / 2);
  while (Math.abs((lines[index + direction] ?? Number.POSITIVE_INFINITY) - from) <= wanted) index += direction;
  return along ? { column: index, row, along } : { column, row: index, along };
}
