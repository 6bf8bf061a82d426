import { cornersOf, type Point } from '../routing/geometry.ts';

/** A pill is about so wide. */
const pillPx = 62;
/** A pill with no room on its cable lies so much above it. */
const abovePx = 18;

/** Where a pill has most room on a cable: the middle of the run that is longest once flags are taken off it. */
export function pillSpot(route: readonly Point[], flags: readonly Point[]): Point {
  let best: Point = route[0] ?? { x: 0, y: 0 };
  let most = Number.NEGATIVE_INFINITY;
  const corners = cornersOf(route);
  corners.forEach((q, i) => {
    const p = corners[i - 1];
    if (!p) return;
    const on = flags.filter((f) => isOn(f, p, q));
    const length = Math.abs(q.x - p.x) + Math.abs(q.y - p.y);
    // Pills are wide and low: an upright run needs less of its length for one.
    const room = length - 36 * on.length + (p.x === q.x ? 24 : 0);
    if (room <= most) return;
    most = room;
    best = middleBeside(p, q, on);
  });
  if (most >= pillPx || corners.length !== 2) return best;
  const along = (corners[1]?.x ?? 0) - (corners[0]?.x ?? 0);
  // Towards the end, as far as no card is reached: above the beginning there is often the next port's flag.
  const shift = Math.min(14, Math.max(0, (Math.abs(along) - pillPx) / 2));
  return { x: best.x + Math.sign(along) * shift, y: best.y - abovePx };
}

const isOn = (flag: Point, p: Point, q: Point): boolean =>
  (p.y === q.y && flag.y === p.y && between(flag.x, p.x, q.x)) ||
  (p.x === q.x && flag.x === p.x && between(flag.y, p.y, q.y));

const between = (value: number, a: number, b: number): boolean => value >= Math.min(a, b) && value <= Math.max(a, b);

/** The middle of a run, moved away from a single flag on it. */
function middleBeside(p: Point, q: Point, flags: readonly Point[]): Point {
  const middle = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
  const [flag, second] = flags;
  if (!flag || second) return middle;
  const shift = 14;
  return { x: middle.x + Math.sign(middle.x - flag.x) * shift, y: middle.y + Math.sign(middle.y - flag.y) * shift };
}
