import { describe, expect, it } from 'vitest';
import { formatExpected } from '../../../core/reports/power-up/format-quantity.ts';
import { parseReading } from '../../../core/reports/power-up/parse-reading.ts';
import { type Expected, openOhms, type PowerUpQuantity } from '../../../core/reports/power-up/sheet.ts';

describe('what is read off a meter', () => {
  it.each<[string, PowerUpQuantity, number]>([
    ['13,8', 'V', 13.8],
    ['−13.80 V', 'V', -13.8],
    ['120 mA', 'A', 0.12],
    ['4.7k', 'ohm', 4700],
    ['OL', 'ohm', openOhms],
    ['0.L', 'ohm', Number.NaN],
    ['open', 'ohm', openOhms],
    ['2.8 W', 'W', 2.8],
    ['1.5', 'swr', 1.5],
    ['1.5:1', 'swr', 1.5],
    ['1 : 1.5', 'swr', 1.5],
  ])('%s as %s', (text, quantity, value) => {
    const read = parseReading(text, quantity);
    if (Number.isNaN(value)) expect(read).toHaveProperty('problem');
    else expect('value' in read ? read.value : read).toBeCloseTo(value, 9);
  });
  it.each<[string, PowerUpQuantity, RegExp]>([
    ['about 13', 'V', /not a number/],
    ['13 A', 'V', /not a unit that fits here/],
    ['open', 'V', /not a number/],
    ['-2', 'ohm', /less than 0/],
    ['2e12 V', 'V', /at most 1e12/],
    ['0.8', 'swr', /1 or more/],
  ])('%s as %s is refused', (text, quantity, problem) =>
    expect(parseReading(text, quantity)).toEqual({ problem: expect.stringMatching(problem) }),
  );
});

describe('what to expect, in words', () => {
  it.each<[Expected, string]>([
    [{ quantity: 'V', value: 13.8, from: 13.42, to: 14.18 }, '13.80 V (13.42 to 14.18 V)'],
    [{ quantity: 'ohm', value: null, from: 1e6, to: null }, 'open (more than 1.00 MΩ)'],
    [{ quantity: 'ohm', value: 0.03, from: 0, to: 0.5 }, 'under 0.50 Ω'],
    [{ quantity: 'ohm', value: 0.7, from: 0, to: 1.14 }, '0.70 Ω (up to 1.14 Ω)'],
    [{ quantity: 'V', value: 0.001, from: -0.02, to: 0.05 }, 'under 50.0 mV'],
    [{ quantity: 'A', value: 0, from: -0.002, to: 0.002 }, '0 A (up to 2.00 mA)'],
    [{ quantity: 'A', value: 0.998, from: 0.95, to: 1.05 }, '998 mA (950 mA to 1.05 A)'],
    [{ quantity: 'swr', value: 1, from: 1, to: 1.22 }, '1.00 (1.00 to 1.22)'],
  ])('%j', (expected, words) => expect(formatExpected(expected)).toBe(words));
});
