import type { Point } from '../routing/geometry.ts';
import type { Hop } from '../routing/hops.ts';

const cornerPx = 8;
const hopPx = 6;

/**
 * The SVG path of a route with rounded corners and hops. With an offset it runs so many pixels beside the route, to
 * the left of its direction: the two conductors of a pair stay parallel around every corner.
 */
export function pathOf(route: readonly Point[], hops: readonly Hop[] = [], offset = 0): string {
  const points = offset === 0 ? route : shifted(route, offset);
  const [first] = points;
  if (!first) return '';
  let path = `M${round(first.x)} ${round(first.y)}`;
  for (let i = 1; i < points.length; i++) {
    const from = points[i - 1];
    const to = points[i];
    if (!from || !to) continue;
    path += hopsAlong(
      from,
      to,
      hops.filter((h) => h.y === route[i]?.y && h.y === route[i - 1]?.y),
    );
    const next = points[i + 1];
    path += next ? corner(from, to, next) : `L${round(to.x)} ${round(to.y)}`;
  }
  return path;
}

const round = (value: number): number => Math.round(value * 10) / 10;

function hopsAlong(from: Point, to: Point, hops: readonly Hop[]): string {
  const direction = Math.sign(to.x - from.x);
  const between = hops.filter((h) => h.fromX > Math.min(from.x, to.x) && h.toX < Math.max(from.x, to.x));
  const inOrder = direction > 0 ? between : [...between].reverse();
  const sweep = direction > 0 ? 1 : 0;
  return inOrder
    .map((hop) => {
      const [start, end] = direction > 0 ? [hop.fromX, hop.toX] : [hop.toX, hop.fromX];
      const arc = (x: number, y: number) => `A${hopPx} ${hopPx} 0 0 ${sweep} ${round(x)} ${round(y)}`;
      const over = start === end ? '' : `L${round(end)} ${round(from.y - hopPx)}`;
      return `L${round(start - direction * hopPx)} ${round(from.y)}${arc(start, from.y - hopPx)}${over}${arc(end + direction * hopPx, from.y)}`;
    })
    .join('');
}

function corner(from: Point, at: Point, next: Point): string {
  const before = toward(at, from);
  const after = toward(at, next);
  return `L${round(before.x)} ${round(before.y)}Q${round(at.x)} ${round(at.y)} ${round(after.x)} ${round(after.y)}`;
}

/** A point on the way from a corner, at most half way. */
function toward(corner: Point, other: Point): Point {
  const length = Math.abs(other.x - corner.x) + Math.abs(other.y - corner.y);
  const share = length === 0 ? 0 : Math.min(cornerPx, length / 2) / length;
  return { x: corner.x + (other.x - corner.x) * share, y: corner.y + (other.y - corner.y) * share };
}

function shifted(route: readonly Point[], offset: number): Point[] {
  const leftOf = (p: Point | undefined, q: Point | undefined): Point =>
    p && q ? { x: Math.sign(q.y - p.y), y: -Math.sign(q.x - p.x) } : { x: 0, y: 0 };
  return route.map((point, i) => {
    const before = leftOf(route[i - 1], point);
    const after = leftOf(point, route[i + 1]);
    return { x: point.x + offset * (before.x + after.x), y: point.y + offset * (before.y + after.y) };
  });
}
