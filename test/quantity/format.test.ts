import { describe, expect, it } from 'vitest';
import { dbmFromWatts, wattsFromDbm } from '../../core/quantity/decibel.ts';
import * as format from '../../core/quantity/format.ts';

describe('figures for reading', () => {
  it.each([
    [format.formatVolts(13.8), '13.80 V'],
    [format.formatVolts(-0.4444), '−444 mV'],
    [format.formatVolts(0), '0 V'],
    [format.formatVolts(110), '110 V'],
    [format.formatAmps(0.75), '750 mA'],
    [format.formatAmps(0.99999), '1.00 A'],
    [format.formatAmps(20.66), '20.7 A'],
    [format.formatAmps(4e-11), '0 A'],
    [format.formatRating(7.5), '7.5 A'],
    [format.formatWatts(3.0199), '3.02 W'],
    [format.formatDbm(34.8), '+34.8 dBm'],
    [format.formatDbm(-0.44), '−0.4 dBm'],
    [format.formatDbm(Number.NEGATIVE_INFINITY), 'none'],
    [format.formatOhms(0.0104), '10.4 mΩ'],
    [format.formatOhms(Number.POSITIVE_INFINITY), 'open'],
    [format.formatImpedance({ re: 50, im: 0 }), '50.0 + j0 Ω'],
    [format.formatImpedance({ re: 35.24, im: -12 }), '35.2 − j12.0 Ω'],
    [format.formatImpedance({ re: Number.POSITIVE_INFINITY, im: 0 }), 'open'],
    [format.formatImpedance({ re: 0, im: Number.NEGATIVE_INFINITY }), 'open'],
    [format.formatLoss(0.2), '0.20 dB'],
    [format.formatLoss(-11.3), '−11.30 dB'],
    [format.formatLoss(Number.POSITIVE_INFINITY), 'all'],
    [format.formatSwr(1.5), '1.50'],
    [format.formatSwr(Number.POSITIVE_INFINITY), 'over 99'],
    [format.formatHours(Number.POSITIVE_INFINITY), 'no end'],
    [format.formatMillivolts(-0.0204), '−20.4 mV'],
    [format.formatMs(2.5), '2.5 ms'],
    [format.formatLength(0.6), '0.60 m'],
    [format.formatLength(0.762, 'feet'), '2 ft 6 in'],
    [format.formatHertz(10_120_000), '10.120 MHz'],
    [format.formatPercent(0.254), '25 %'],
    [format.formatPercent(0.0213), '2.1 %'],
  ])('%s', (text, wanted) => expect(text).toBe(wanted));
});

describe('what is no figure', () => {
  const { formatImpedance, formatLength, formatWithin, ...others } = format;
  const writers: [string, (value: number) => string][] = [
    ...Object.entries(others).map(([name, write]): [string, (value: number) => string] => [name, (v) => write(v, 2)]),
    ['formatImpedance, ohms', (re) => formatImpedance({ re, im: 1 })],
    ['formatImpedance, reactance', (im) => formatImpedance({ re: 1, im })],
    ['formatLength, metric', (metres) => formatLength(metres)],
    ['formatLength, feet', (metres) => formatLength(metres, 'feet')],
    ['formatWithin, from', (from) => formatWithin({ from, to: 1 })],
    ['formatWithin, to', (to) => formatWithin({ from: 1, to })],
  ];
  it.each(writers)('gets a word: %s', (_, write) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(write(value)).toMatch(/not known|endless|open|none|all|no end|over 99/);
    expect(write(Number.NaN)).toMatch(/not known/);
  });
});

describe('decibels', () => {
  // Table of levels in 50 Ω: 5 W is +36.99 dBm, 1500 W +61.76 dBm; 0 dBm is 1 mW by definition (IEC 60027-3).
  it.each([
    [0.001, 0],
    [1, 30],
    [5, 36.99],
    [1500, 61.76],
  ])('%d W', (watts, dbm) => {
    expect(dbmFromWatts(watts)).toBeCloseTo(dbm, 2);
    expect(wattsFromDbm(dbm) / watts).toBeCloseTo(1, 2);
  });
  it('no power has no level', () => expect(dbmFromWatts(0)).toBe(Number.NEGATIVE_INFINITY));
});
