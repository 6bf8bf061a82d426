import type { Rect } from '../../canvas/routing/geometry.ts';

/** Room for a picture on a page, millimetres. */
export interface Room {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** One page of a drawing: the part of it that is shown, and the name of that part in the index grid. */
export interface Tile {
  readonly name: string;
  readonly view: Rect;
}

export interface Tiling {
  /** Millimetres on paper for each pixel of the drawing. */
  readonly scale: number;
  /** A single page has no name. */
  readonly tiles: readonly Tile[];
}

/** At 96 pixels an inch a drawing is as large as on the screen; larger helps nobody. */
const largest = 25.4 / 96;
/** Below this the labels of ports, 12 pixels high, are under 5.5 points: too small to read at the bench. */
const smallest = 0.162;
/** What a drawing over several pages is printed at. */
const tiled = 0.2;
/** What neighbouring pages both show, so that nothing is lost at a cut. */
const overlapMm = 10;

/**
 * How a drawing goes on pages: on one where its labels stay readable, else on several, named A1, A2 … by row and
 * column, that overlap.
 */
export function tileDrawing(bounds: Rect, { widthMm, heightMm }: Room): Tiling {
  const fitting = Math.min(widthMm / bounds.width, heightMm / bounds.height, largest);
  if (fitting >= smallest) return { scale: fitting, tiles: [{ name: '', view: bounds }] };
  const columns = cuts(bounds.x, bounds.width, widthMm / tiled);
  const rows = cuts(bounds.y, bounds.height, heightMm / tiled);
  const size = { width: widthMm / tiled, height: heightMm / tiled };
  const tiles = rows.flatMap((y, row) =>
    columns.map((x, column) => ({ name: `${rowName(row)}${column + 1}`, view: { x, y, ...size } })),
  );
  return { scale: tiled, tiles };
}

/** Where the pages along one side begin. */
function cuts(from: number, size: number, page: number): number[] {
  const step = page - overlapMm / tiled;
  const count = size <= page ? 1 : Math.ceil((size - page) / step) + 1;
  // The pages that there are show equally much.
  const spread = count === 1 ? 0 : (size - page) / (count - 1);
  return Array.from({ length: count }, (_, i) => from + i * spread);
}

/** A to Z, then AA, AB … */
const rowName = (row: number): string =>
  row < 26 ? String.fromCharCode(65 + row) : rowName(Math.floor(row / 26) - 1) + rowName(row % 26);
