import { describe, expect, it } from 'vitest';

/** One known answer: a figure as it is printed, and where. */
export interface Row {
  readonly name: string;
  readonly given: number;
  readonly printed: string;
  /** Half of the last printed place unless the source rounds otherwise. */
  readonly tolerance?: number;
  readonly source: string;
}

/** Half of the last place of a printed figure, with a hair's breadth for what falls in the middle. */
const halfLastPlace = (printed: string): number => 0.500001 * 10 ** -(printed.split('.')[1]?.length ?? 0);

/** A table of known answers as tests, each within its printed precision. */
export function checkRows(title: string, rows: readonly Row[]) {
  describe(title, () => {
    it.each(rows)('$name: $printed ($source)', ({ given, printed, tolerance = halfLastPlace(printed) }) => {
      expect(Math.abs(given - Number(printed)), `${given}`).toBeLessThanOrEqual(tolerance);
    });
  });
}
