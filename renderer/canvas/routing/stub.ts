import { type Facing, type Point, stepOf } from './geometry.ts';
import { type Grid, indexOfLine, lanePx } from './grid.ts';
import type { Stop } from './search.ts';

/** Where a cable comes out of a card. */
export interface RouteEnd extends Point {
  readonly side: Facing;
}

/** The straight piece of a cable behind its port. */
export interface Stub {
  /** The first lane beside the card: the cable has to get there. */
  readonly first: Stop;
  /** Where it is long enough for a flag: the cable should get there. */
  readonly last: Stop;
  /** The places from the first lane on, without the last. */
  readonly places: readonly number[];
}

/** A stub this long has room for a flag. */
const stubPx = lanePx * 4;

/** The stub of a cable at a port, as long as other cards leave it. Null where a card stands right at the port. */
export function stubOf(grid: Grid, end: RouteEnd): Stub | null {
  const step = stepOf[end.side];
  const along = step.x !== 0;
  const lines = along ? grid.xs : grid.ys;
  const column = indexOfLine(grid.xs, end.x);
  const row = indexOfLine(grid.ys, end.y);
  const direction = along ? step.x : step.y;
  const from = along ? end.x : end.y;
  const placeAt = (index: number) => (along ? row * grid.xs.length + index : index * grid.xs.length + column);
  const stopAt = (index: number): Stop => (along ? { column: index, row, along } : { column, row: index, along });
  const distance = (index: number) => Math.abs((lines[index] ?? Number.POSITIVE_INFINITY) - from);
  let index = (along ? column : row) + direction;
  while (distance(index) < lanePx) index += direction;
  if (!Number.isFinite(distance(index)) || grid.blocked[placeAt(index)]) return null;
  const first = stopAt(index);
  const places: number[] = [];
  while (distance(index + direction) <= stubPx && !grid.blocked[placeAt(index + direction)]) {
    places.push(placeAt(index));
    index += direction;
  }
  return { first, last: stopAt(index), places };
}
