/** Milliseconds of the parts of Morse at one speed. */
export interface KeyingTimes {
  readonly dashMs: number;
  /** Between the elements of a character. */
  readonly elementGapMs: number;
  readonly characterGapMs: number;
  readonly wordGapMs: number;
}

/**
 * Times of dash and gaps for a dot of so many milliseconds: a dash is three dots, a gap inside a character one, between
 * characters three, between words seven (Recommendation ITU-R M.1677-1, part I, section 2).
 *
 *     keyingTimes(60).wordGapMs // 420, at 20 words a minute
 */
export const keyingTimes = (dotMs: number): KeyingTimes => ({
  dashMs: 3 * dotMs,
  elementGapMs: dotMs,
  characterGapMs: 3 * dotMs,
  wordGapMs: 7 * dotMs,
});
