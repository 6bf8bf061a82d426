import { expect, test } from 'vitest';
import type { Station } from '../../core/index.ts';
import { sheetLimitMs, surveyLimitMs } from '../../renderer/worker/limits.ts';
import { generateStation } from '../stations/generate.ts';

const minute = 60_000;

/** Seconds on two cores that did the work of seven: what a slow machine takes. */
const measured = [
  { units: 20, surveyS: 0.9, sheetS: 7 },
  { units: 60, surveyS: 0.8, sheetS: 19 },
  { units: 200, surveyS: 3.5, sheetS: 116 },
];

test.each(measured)(
  'a machine that is slow with $units units is given five times as long and more',
  ({ units, surveyS, sheetS }) => {
    const station = generateStation(units);
    expect(surveyLimitMs(station)).toBeGreaterThan(5 * surveyS * 1000);
    expect(sheetLimitMs(station)).toBeGreaterThan(5 * sheetS * 1000);
  },
);

test('nothing is computed for more than an hour, however much is drawn', () => {
  const one = generateStation(20);
  const units = Array.from({ length: 50_000 }, (_, i) => ({ ...one.units[0]!, id: `u${i}` }));
  const huge: Station = { ...one, units };
  expect(surveyLimitMs(huge)).toBe(60 * minute);
  expect(sheetLimitMs(huge)).toBe(60 * minute);
});
