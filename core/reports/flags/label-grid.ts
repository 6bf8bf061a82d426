import { type FlagSheet, pageSizeMm } from './flag-sheet.ts';

export interface LabelPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The places of a page's labels, row by row, millimetres from its upper left corner. */
export interface LabelGrid {
  readonly labels: readonly LabelPlace[];
}

/** The least that a label can be, millimetres: below it no type is readable. */
const leastMm = 4;
const mostLabels = 2000;

/** The labels of one page; a sentence where they don't go on it. */
export function labelGrid(sheet: FlagSheet): LabelGrid | { readonly problem: string } {
  const { widthMm, heightMm } = pageSizeMm(sheet);
  const free = {
    width: widthMm - sheet.leftMm - sheet.rightMm,
    height: heightMm - sheet.topMm - sheet.bottomMm,
  };
  if (free.width < leastMm || free.height < leastMm) return { problem: 'The margins leave nothing of the page.' };
  const { columns, rows, width, height } = sheet.style === 'strip' ? strips(sheet, free) : cells(sheet, free);
  if (columns < 1 || rows < 1)
    return { problem: `A strip of ${say(width)} × ${say(height)} mm does not go on the page.` };
  if (width < leastMm || height < leastMm)
    return {
      problem: `The labels would be ${say(width)} × ${say(height)} mm: fewer rows or columns, or smaller gaps.`,
    };
  if (rows * columns > mostLabels) return { problem: `${rows * columns} labels on a page are too many.` };
  if (sheet.style === 'wrap' && (width - sheet.wrapMm) / 2 < leastMm)
    return {
      problem: `A label of ${say(width)} mm has no room for text beside ${say(sheet.wrapMm)} mm round the cable.`,
    };
  const labels = Array.from({ length: rows * columns }, (_, i) => ({
    x: sheet.leftMm + (i % columns) * (width + sheet.gapXMm),
    y: sheet.topMm + Math.floor(i / columns) * (height + sheet.gapYMm),
    width,
    height,
  }));
  return { labels };
}

interface Free {
  readonly width: number;
  readonly height: number;
}

function cells({ rows, columns, gapXMm, gapYMm }: FlagSheet, free: Free) {
  return {
    rows,
    columns,
    width: (free.width - (columns - 1) * gapXMm) / columns,
    height: (free.height - (rows - 1) * gapYMm) / rows,
  };
}

/** As many strips as go on the page. */
function strips({ stripLengthMm: width, stripHeightMm: height, gapXMm, gapYMm }: FlagSheet, free: Free) {
  // A millionth to spare: three strips of 60.1 mm are not 180.29999 mm.
  const fits = (room: number, size: number, gap: number) => Math.floor((room + gap) / (size + gap) + 1e-6);
  return { width, height, columns: fits(free.width, width, gapXMm), rows: fits(free.height, height, gapYMm) };
}

const say = (mm: number): string => String(Number(mm.toFixed(1)));
