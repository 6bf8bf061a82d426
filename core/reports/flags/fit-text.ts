/** Width in millimetres of a text in type of so many millimetres. It has to grow in step with the type. */
export type MeasureText = (text: string, sizeMm: number) => number;

export interface FittedText {
  readonly sizeMm: number;
  readonly lines: readonly string[];
}

export interface TypeLimits {
  readonly largestMm: number;
  readonly smallestMm: number;
}

/** From one line to the next, as a share of the type's height. */
export const lineHeight = 1.2;

/**
 * Lines of text in a box: as large as they fit up to the limit; where they would be below the smallest type, in that
 * type and wrapped between words; null where even so they don't fit, or a single word is wider than the box.
 */
export function fitText(
  lines: readonly string[],
  box: { readonly width: number; readonly height: number },
  { largestMm, smallestMm }: TypeLimits,
  measure: MeasureText,
): FittedText | null {
  const widest = Math.max(...lines.map((line) => measure(line, 1)));
  const sizeMm = Math.min(largestMm, box.height / (lines.length * lineHeight), box.width / widest);
  if (sizeMm >= smallestMm) return { sizeMm, lines };
  const wrapped = lines.map((line) => wrap(line, box.width, (text) => measure(text, smallestMm)));
  if (wrapped.some((line) => line === null)) return null;
  const all = wrapped.flatMap((line) => line ?? []);
  return all.length * lineHeight * smallestMm <= box.height + 1e-9 ? { sizeMm: smallestMm, lines: all } : null;
}

/** A line broken between words; null where a word is too wide. */
function wrap(line: string, width: number, measure: (text: string) => number): string[] | null {
  const broken: string[] = [];
  let current = '';
  for (const word of line.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (measure(longer) <= width) {
      current = longer;
    } else {
      if (measure(word) > width) return null;
      if (current !== '') broken.push(current);
      current = word;
    }
  }
  return current === '' ? broken : [...broken, current];
}
