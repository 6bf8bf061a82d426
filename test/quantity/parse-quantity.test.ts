import { describe, expect, it } from 'vitest';
import { parseQuantity, type QuantityKind } from '../../core/quantity/parse-quantity.ts';

const rows: [text: string, kind: QuantityKind, value: number][] = [
  ['13.8', 'V', 13.8],
  ['13,8 V', 'V', 13.8],
  ['500mV', 'V', 0.5],
  ['−2 V', 'V', -2],
  ['750 mA', 'A', 0.75],
  ['4,7k', 'ohm', 4700],
  ['4.7 kΩ', 'ohm', 4700],
  ['10 mohm', 'ohm', 0.01],
  ['20 ft', 'm', 6.096], // 1 ft = 0.3048 m exactly (international foot, 1959)
  ['2 ft 6 in', 'm', 0.762],
  ['2\'6"', 'm', 0.762],
  ['60 cm', 'm', 0.6],
  ['200 mW', 'W', 0.2],
  ['+10 dBm', 'W', 0.01], // 0 dBm is 1 mW
  ['10', 'dBm', 10],
  ['5 W', 'dBm', 36.9897],
  ['10.12 MHz', 'Hz', 10_120_000],
  ['3 ms', 'ms', 3],
  ['1.5 s', 'ms', 1500],
  ['40 %', 'number', 0.4],
  ['1e3', 'ohm', 1000],
];

describe('what people type', () => {
  it.each(rows)('%s as %s', (text, kind, value) => {
    const parsed = parseQuantity(text, kind);
    if ('problem' in parsed) throw new Error(parsed.problem);
    expect(Math.abs(parsed.value - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-5);
  });
  it.each([
    ['', 'V', /Nothing/],
    ['abc', 'V', /“abc” is not a number/],
    ['12 A', 'V', /“A” is not a unit that fits here; use V/],
    ['3 parsecs', 'm', /use m/],
    ['1e999', 'V', /too large/],
    ['--3', 'V', /not a number/],
  ] as [string, QuantityKind, RegExp][])('%s is refused with a sentence', (text, kind, words) => {
    const parsed = parseQuantity(text, kind);
    expect('problem' in parsed ? parsed.problem : parsed).toMatch(words);
  });
});
