import { type FittedText, fitText, type MeasureText } from './fit-text.ts';
import { type FlagSheet, pageSizeMm } from './flag-sheet.ts';
import { type FlagText, linesOf } from './flag-text.ts';
import { type LabelPlace, labelGrid } from './label-grid.ts';

/** A flag on its label. */
export interface PlacedFlag {
  readonly flag: FlagText;
  readonly label: LabelPlace;
  /** Where its rings are; null where none are printed. */
  readonly rings: LabelPlace | null;
  /** Where its text is: once, or twice on a label that folds. */
  readonly texts: readonly LabelPlace[];
  /** Null where the text is too long. */
  readonly fitted: FittedText | null;
  /** The lines at which it folds, millimetres from the left of the page. */
  readonly folds: readonly number[];
}

export interface FlagPages {
  readonly widthMm: number;
  readonly heightMm: number;
  /** All places of labels on a page, used or not. */
  readonly labels: readonly LabelPlace[];
  readonly pages: readonly (readonly PlacedFlag[])[];
  /** What can't be printed, in sentences; a flag too long is named by its cable and where it goes. */
  readonly problems: readonly string[];
}

/** Millimetres of one printers' point. */
const pointMm = 25.4 / 72;
const paddingMm = 1.2;
/** Width of a colour ring on paper; the one of the class is the wide one. */
export const ringMm = { class: 4, digit: 2.2, gap: 0.5 } as const;

/** The flags on their sheets from the first free label on. */
export function layOutFlags(flags: readonly FlagText[], sheet: FlagSheet, measure: MeasureText): FlagPages {
  const size = pageSizeMm(sheet);
  const grid = labelGrid(sheet);
  if ('problem' in grid) return { ...size, labels: [], pages: [], problems: [grid.problem] };
  const { labels } = grid;
  if (sheet.startAt > labels.length)
    return {
      ...size,
      labels,
      pages: [],
      problems: [`A sheet has ${labels.length} labels; it can’t start at ${sheet.startAt}.`],
    };
  const pages: PlacedFlag[][] = [];
  flags.forEach((flag, i) => {
    const at = sheet.startAt - 1 + i;
    const page = Math.floor(at / labels.length);
    const label = labels[at % labels.length];
    pages[page] ??= [];
    if (label) pages[page].push(place(flag, label, sheet, measure));
  });
  const tooLong = pages.flat().filter(({ fitted }) => !fitted);
  return { ...size, labels, pages, problems: tooLong.map(sentence) };
}

function place(flag: FlagText, label: LabelPlace, sheet: FlagSheet, measure: MeasureText): PlacedFlag {
  const inside = inset(label, paddingMm);
  const folds = sheet.style === 'wrap' ? foldsOf(label, sheet.wrapMm) : null;
  const half = folds ? { ...inside, width: folds.left - paddingMm - inside.x } : inside;
  const bandMm = sheet.rings ? ringsWidth(flag.rings.length) : 0;
  const text = { ...half, x: half.x + bandMm, width: half.width - bandMm };
  const second = folds && sheet.twice ? [{ ...text, x: text.x + folds.right - label.x }] : [];
  const limits = { largestMm: sheet.largestPt * pointMm, smallestMm: sheet.smallestPt * pointMm };
  return {
    flag,
    label,
    rings: sheet.rings ? { ...half, width: bandMm } : null,
    texts: [text, ...second],
    fitted: text.width > 0 ? fitText(linesOf(flag), text, limits, measure) : null,
    folds: folds ? [folds.left, folds.right] : [],
  };
}

const ringsWidth = (count: number): number => ringMm.class + (count - 1) * ringMm.digit + count * ringMm.gap + 0.5;

const inset = ({ x, y, width, height }: LabelPlace, by: number): LabelPlace => ({
  x: x + by,
  y: y + by,
  width: width - 2 * by,
  height: height - 2 * by,
});

/** The cable lies in the middle; the halves are stuck back to back. */
function foldsOf({ x, width }: LabelPlace, wrapMm: number): { readonly left: number; readonly right: number } {
  return { left: x + (width - wrapMm) / 2, right: x + (width + wrapMm) / 2 };
}

const sentence = ({ flag, texts: [text] }: PlacedFlag): string =>
  `The flag of ${flag.number} at ${flag.here} is too long for ${(text?.width ?? 0).toFixed(1)} × ${(text?.height ?? 0).toFixed(1)} mm.`;
