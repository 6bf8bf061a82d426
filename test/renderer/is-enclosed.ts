import { type Point, type Rect, stepOf } from '../../renderer/canvas/routing/geometry.ts';
import type { RouteRequest } from '../../renderer/canvas/routing/route-cables.ts';

/** A cable keeps so far from cards. */
const clearPx = 8;
/** From a port to where its cable may turn. */
const frontPx = 9;
const farPx = 100;

/**
 * Whether cards close every way of a cable, found without the router: from the point in front of one port the free
 * paper is flooded, from crossing to crossing of the lines along all cards' sides and through both points, until the
 * other point is wet or nothing more can be. Where boxes are the only walls those lines reach all that can be reached.
 */
export function isEnclosed(cards: readonly Rect[], { a, b }: Pick<RouteRequest, 'a' | 'b'>): boolean {
  const walls = cards.map(({ x, y, width, height }) => ({
    left: x - clearPx,
    right: x + width + clearPx,
    top: y - clearPx,
    bottom: y + height + clearPx,
  }));
  const dry = (x: number, y: number) => walls.some((w) => x > w.left && x < w.right && y > w.top && y < w.bottom);
  const [start, goal] = [a, b].map(inFrontOf) as [Point, Point];
  if (dry(start.x, start.y) || dry(goal.x, goal.y)) return true;
  const xs = lines([start.x, goal.x, ...walls.flatMap((w) => [w.left, w.right])]);
  const ys = lines([start.y, goal.y, ...walls.flatMap((w) => [w.top, w.bottom])]);
  const wet = new Set<number>();
  const front: [number, number][] = [[xs.indexOf(start.x), ys.indexOf(start.y)]];
  for (let next = front.pop(); next; next = front.pop()) {
    const [column, row] = next;
    const [x, y] = [xs[column] as number, ys[row] as number];
    if (x === goal.x && y === goal.y) return false;
    if (wet.has(row * xs.length + column)) continue;
    wet.add(row * xs.length + column);
    for (const [dx, dy] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      const [toX, toY] = [xs[column + dx], ys[row + dy]];
      if (toX === undefined || toY === undefined || dry(toX, toY) || dry((x + toX) / 2, (y + toY) / 2)) continue;
      front.push([column + dx, row + dy]);
    }
  }
  return true;
}

const inFrontOf = ({ x, y, side }: RouteRequest['a']): Point => ({
  x: x + stepOf[side].x * frontPx,
  y: y + stepOf[side].y * frontPx,
});

/** Each once, in order, with one beyond them on both sides. */
function lines(values: readonly number[]): number[] {
  const sorted = [...new Set(values)].sort((p, q) => p - q);
  return [(sorted[0] ?? 0) - farPx, ...sorted, (sorted.at(-1) ?? 0) + farPx];
}
