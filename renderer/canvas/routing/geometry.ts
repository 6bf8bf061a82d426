export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Rect extends Point {
  readonly width: number;
  readonly height: number;
}

export type Facing = 'left' | 'right' | 'top' | 'bottom';

/** The unit step away from a card on one of its sides. */
export const stepOf: Record<Facing, Point> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  top: { x: 0, y: -1 },
  bottom: { x: 0, y: 1 },
};

/** The smallest rectangle around some others; null around none. */
export function boundsOf(rects: readonly Rect[]): Rect | null {
  if (rects.length === 0) return null;
  const [x, y] = [Math.min(...rects.map((r) => r.x)), Math.min(...rects.map((r) => r.y))];
  const right = Math.max(...rects.map((r) => r.x + r.width));
  const bottom = Math.max(...rects.map((r) => r.y + r.height));
  return { x, y, width: right - x, height: bottom - y };
}

/** The corners of a line: points in the middle of a straight run, and doubled points, left out. */
export function cornersOf(points: readonly Point[]): Point[] {
  const corners: Point[] = [];
  for (const point of points) {
    const last = corners.at(-1);
    if (last && last.x === point.x && last.y === point.y) continue;
    const before = corners.at(-2);
    if (last && before && isBetween(before, last, point)) corners.pop();
    corners.push(point);
  }
  return corners;
}

const isBetween = (a: Point, b: Point, c: Point): boolean =>
  (a.x === b.x && b.x === c.x && (b.y - a.y) * (c.y - b.y) > 0) ||
  (a.y === b.y && b.y === c.y && (b.x - a.x) * (c.x - b.x) > 0);

export const isSameLine = (one: readonly Point[], other: readonly Point[]): boolean =>
  one.length === other.length && one.every(({ x, y }, i) => x === other[i]?.x && y === other[i]?.y);

/** Length of an orthogonal line. */
export const lengthOf = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const before = points[i - 1];
    return before ? sum + Math.abs(p.x - before.x) + Math.abs(p.y - before.y) : 0;
  }, 0);
