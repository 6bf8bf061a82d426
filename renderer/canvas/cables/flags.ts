import { textWidth } from '../cards/text-width.ts';
import { cornersOf, lengthOf, type Point } from '../routing/geometry.ts';

export const flagHeight = 15;
/** From the middle of a port to its flag: the port's face reaches over the card's edge. */
const gapPx = 9;

/** How wide a flag with this number is. */
export const flagWidth = (number: string): number => Math.round(textWidth(number, 11, 'mono') + 7);

/** The middles of a cable's flags: one behind each port, or a single one where the cable is too short for two. */
export function flagSpots(points: readonly Point[], width: number): Point[] {
  const corners = cornersOf(points);
  const [first, second] = corners;
  const last = corners.at(-1);
  const beforeLast = corners.at(-2);
  if (!first || !second || !last || !beforeLast) return [];
  if (lengthOf(corners) < 2 * (width + gapPx) + 46) return [middleOfLongest(corners)];
  return [behind(first, second, width), behind(last, beforeLast, width)];
}

function behind(port: Point, next: Point, width: number): Point {
  const x = Math.sign(next.x - port.x);
  const y = Math.sign(next.y - port.y);
  return { x: port.x + x * (gapPx + width / 2), y: port.y + y * (gapPx + flagHeight / 2) };
}

/** The middle of a cable's longest straight run. */
function middleOfLongest(corners: readonly Point[]): Point {
  let best: Point = corners[0] ?? { x: 0, y: 0 };
  let longest = -1;
  corners.forEach((p, i) => {
    const before = corners[i - 1];
    if (!before) return;
    const length = Math.abs(p.x - before.x) + Math.abs(p.y - before.y);
    if (length <= longest) return;
    longest = length;
    best = { x: (p.x + before.x) / 2, y: (p.y + before.y) / 2 };
  });
  return best;
}
