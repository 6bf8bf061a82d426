import type { Expected } from './sheet.ts';

/** Whether a reading is out of the range in which it is right; the bounds themselves are right. */
export const isOff = ({ from, to }: Expected, value: number): boolean => value < from || (to !== null && value > to);

/** In words: right, too low, too high. */
export function judgeReading(expected: Expected, value: number): 'right' | 'too low' | 'too high' {
  if (!isOff(expected, value)) return 'right';
  return value < expected.from ? 'too low' : 'too high';
}
