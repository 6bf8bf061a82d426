import { cornersOf, type Point, stepOf } from './geometry.ts';
import { lanePx } from './grid.ts';
import type { RouteEnd } from './stub.ts';

/** An orthogonal line that leaves both ports in their direction and heeds nothing else: no card, no other cable. */
export function simpleWay(a: RouteEnd, b: RouteEnd): Point[] {
  const [from, to] = [tipOf(a), tipOf(b)];
  return cornersOf([{ x: a.x, y: a.y }, from, ...between(a, from, b, to), to, { x: b.x, y: b.y }]);
}

const tipOf = ({ x, y, side }: RouteEnd): Point => ({
  x: x + stepOf[side].x * lanePx * 2,
  y: y + stepOf[side].y * lanePx * 2,
});

function between(a: RouteEnd, from: Point, b: RouteEnd, to: Point): Point[] {
  const [there, back] = [stepOf[a.side], stepOf[b.side]];
  if (there.x !== 0 && back.x === 0) return [{ x: to.x, y: from.y }];
  if (there.x === 0 && back.x !== 0) return [{ x: from.x, y: to.y }];
  const across = to.x - from.x;
  const down = to.y - from.y;
  const ahead = across * there.x + down * there.y >= 0 && across * back.x + down * back.y <= 0;
  // Straight on as far as the middle where the other port lies ahead, else to the side first.
  if ((there.x !== 0) === ahead) {
    const x = Math.round(from.x + across / 2);
    return [
      { x, y: from.y },
      { x, y: to.y },
    ];
  }
  const y = Math.round(from.y + down / 2);
  return [
    { x: from.x, y },
    { x: to.x, y },
  ];
}
