import type { Point, Rect } from './geometry.ts';

/** Lanes are this far apart. */
export const lanePx = 9;
/** No lane runs nearer to a card than this; the first free lane beside a card is one lane away from it. */
export const clearPx = 8;

/**
 * The lanes that cables may run in, and what is in them. Lanes lie on multiples of `lanePx`, except beside a port that
 * is off them: the port's own lane takes the place of those too near to it, so that a cable leaves its port straight.
 */
export interface Grid {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** By `row * xs.length + column`: 1 in or beside a card. */
  readonly blocked: Uint8Array;
  /** 1 in the second lane beside a card, where a cable may run but better keeps away. */
  readonly near: Uint8Array;
  /** How many cables run along and up or down through the place. */
  readonly along: Uint8Array;
  readonly upDown: Uint8Array;
  /** How many flags cover the place. */
  readonly flags: Uint8Array;
}

export function buildGrid(cards: readonly Rect[], ports: readonly Point[]): Grid {
  const xs = lanes(
    ports.map((p) => p.x),
    cards.flatMap((c) => [c.x, c.x + c.width]),
  );
  const ys = lanes(
    ports.map((p) => p.y),
    cards.flatMap((c) => [c.y, c.y + c.height]),
  );
  const size = xs.length * ys.length;
  const fresh = () => new Uint8Array(size);
  const grid = { xs, ys, blocked: fresh(), near: fresh(), along: fresh(), upDown: fresh(), flags: fresh() };
  for (const card of cards) {
    fillRect(grid, grid.near, card, clearPx + lanePx);
    fillRect(grid, grid.blocked, card, clearPx);
  }
  return grid;
}

/** So far beyond everything there is room to go around it. */
const marginPx = lanePx * 12;
/** In a wider drawing there are lanes only near something: nothing has to be got out of the way of in between. */
const widestPx = 30_000;

const laneBefore = (at: number): number => Math.floor(at / lanePx) * lanePx;

function lanes(ports: readonly number[], edges: readonly number[]): number[] {
  const wanted = [...new Set(ports)].sort((a, b) => a - b);
  const all = [...wanted, ...edges];
  if (all.length === 0) return [];
  const first = laneBefore(Math.min(...all) - marginPx);
  const last = Math.max(...all) + marginPx;
  const isWide = last - first > widestPx;
  const edgesInOrder = isWide ? all.toSorted((a, b) => a - b) : [];
  const found: number[] = [];
  let next = 0;
  let edge = 0;
  for (let lane = first; lane <= last; lane += lanePx) {
    if (isWide) {
      while ((edgesInOrder[edge] ?? last) + marginPx < lane) edge++;
      lane = Math.max(lane, laneBefore((edgesInOrder[edge] ?? last) - marginPx));
    }
    while (next < wanted.length && (wanted[next] ?? 0) < lane - lanePx) next++;
    const tooNear = [wanted[next - 1], wanted[next], wanted[next + 1], wanted[next + 2]].some(
      (w) => w !== undefined && Math.abs(w - lane) < 6,
    );
    if (!tooNear) found.push(lane);
  }
  return [...wanted, ...found].sort((a, b) => a - b);
}

/** Marks every place inside a rectangle grown by `grow` on all sides. */
export function fillRect(grid: Grid, layer: Uint8Array, rect: Rect, grow: number, by = 0) {
  const columns = range(grid.xs, rect.x - grow, rect.x + rect.width + grow);
  const rows = range(grid.ys, rect.y - grow, rect.y + rect.height + grow);
  for (let row = rows[0]; row < rows[1]; row++) {
    for (let column = columns[0]; column < columns[1]; column++) {
      const at = row * grid.xs.length + column;
      layer[at] = by === 0 ? 1 : (layer[at] ?? 0) + by;
    }
  }
}

/** First index inside and first index beyond an open interval. */
function range(lines: readonly number[], from: number, to: number): [number, number] {
  return [lowerBound(lines, from, true), lowerBound(lines, to, false)];
}

function lowerBound(lines: readonly number[], value: number, beyond: boolean): number {
  let low = 0;
  let high = lines.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const line = lines[middle] ?? 0;
    if (line < value || (beyond && line === value)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The index of a line that is known to be there. */
export const indexOfLine = (lines: readonly number[], value: number): number => lowerBound(lines, value, false);
