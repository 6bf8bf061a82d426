/** How flags are printed: on labels, on labels that fold round the cable, or on strips of heat-shrink. Millimetres. */
export interface FlagSheet {
  readonly style: 'label' | 'wrap' | 'strip';
  readonly page: 'a4' | 'letter' | 'own';
  /** The page where it is the user's own. */
  readonly ownWidthMm: number;
  readonly ownHeightMm: number;
  readonly topMm: number;
  readonly rightMm: number;
  readonly bottomMm: number;
  readonly leftMm: number;
  /** The grid of a label sheet; strips fill the page. */
  readonly rows: number;
  readonly columns: number;
  readonly gapXMm: number;
  readonly gapYMm: number;
  /** The first label that is not used yet, counted row by row from 1. */
  readonly startAt: number;
  /** The part of a folded label that lies round the cable. */
  readonly wrapMm: number;
  /** A folded label has its text on both halves; else one half stays blank. */
  readonly twice: boolean;
  readonly stripHeightMm: number;
  readonly stripLengthMm: number;
  readonly rings: boolean;
  /** The height of the type, points. */
  readonly largestPt: number;
  readonly smallestPt: number;
}

/** Four columns of twelve on A4, type from 10 down to 5 points. Common practice. */
export const usualFlagSheet: FlagSheet = {
  style: 'label',
  page: 'a4',
  ownWidthMm: 210,
  ownHeightMm: 297,
  topMm: 10,
  rightMm: 8,
  bottomMm: 10,
  leftMm: 8,
  rows: 12,
  columns: 4,
  gapXMm: 2,
  gapYMm: 1,
  startAt: 1,
  wrapMm: 16,
  twice: true,
  stripHeightMm: 9,
  stripLengthMm: 60,
  rings: true,
  largestPt: 10,
  smallestPt: 5,
};

/** Sizes of a page: A4 by ISO 216, Letter by ANSI Y14.1 (8.5 by 11 inches). */
export function pageSizeMm(sheet: FlagSheet): { readonly widthMm: number; readonly heightMm: number } {
  if (sheet.page === 'a4') return { widthMm: 210, heightMm: 297 };
  if (sheet.page === 'letter') return { widthMm: 215.9, heightMm: 279.4 };
  return { widthMm: sheet.ownWidthMm, heightMm: sheet.ownHeightMm };
}
