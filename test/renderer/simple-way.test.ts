import { expect, test } from 'vitest';
import { type Facing, stepOf } from '../../renderer/canvas/routing/geometry.ts';
import { simpleWay } from '../../renderer/canvas/routing/simple-way.ts';

const sides: Facing[] = ['left', 'right', 'top', 'bottom'];
const far = [-200, -9, 0, 9, 200];
const cases = sides.flatMap((from) => sides.flatMap((to) => far.flatMap((x) => far.map((y) => ({ from, to, x, y })))));

test.each(cases)('from $from to $to, $x across and $y down: straight out of both ports, at right angles', (one) => {
  const { from, to, x, y } = one;
  const way = simpleWay({ x: 0, y: 0, side: from }, { x, y, side: to });
  expect(way[0]).toEqual({ x: 0, y: 0 });
  expect(way.at(-1)).toEqual({ x, y });
  way.slice(1).forEach((q, i) => {
    const p = way[i]!;
    expect(p.x === q.x || p.y === q.y).toBe(true);
  });
  if (Math.hypot(x, y) < 100) return;
  const [second, beforeLast] = [way[1]!, way.at(-2)!];
  expect([Math.sign(second.x), Math.sign(second.y)]).toEqual([stepOf[from].x, stepOf[from].y]);
  expect([Math.sign(beforeLast.x - x), Math.sign(beforeLast.y - y)]).toEqual([stepOf[to].x, stepOf[to].y]);
});
