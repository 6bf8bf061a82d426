import { describe, expect, it } from 'vitest';
import { fuseColour, fuseOhms, fuseRatings, openingTime } from '../../core/catalog/wire/fuses.ts';

const blade = 'blade fuse data sheet, typical';
const quick = '5 × 20 mm quick fuse data sheet, IEC 60127-2 sheet 2';

// Left out: drops at full current (109 mV at 10 A, 96 mV at 40 A) are those of a hot element; the table is cold.
// Left out: UL 248-14 gates belong to another family of glass fuses than the IEC ones here.
describe('cold voltage drop', () => {
  it.each([
    {
      name: 'blade 10 A at 0.1 A',
      given: 0.1 * fuseOhms(10, 'blade'),
      expect: 0.77e-3,
      tolerance: 0.005e-3,
      source: blade,
    },
    {
      name: 'blade 40 A at 40 A',
      given: 40 * fuseOhms(40, 'blade'),
      expect: 57.6e-3,
      tolerance: 0.05e-3,
      source: blade,
    },
    {
      name: 'quick 2 A at 2 A',
      given: 2 * fuseOhms(2, 'glass-fast'),
      expect: 83.2e-3,
      tolerance: 0.05e-3,
      source: quick,
    },
  ])('$name ($source)', (row) => {
    expect(Math.abs(row.given - row.expect)).toBeLessThanOrEqual(row.tolerance);
  });
});

const gates = 'ISO 8820-3 gates in a blade fuse data sheet';
const memory = 'from memory: ISO 8820-3 gates of 3 to 30 A';
const slow = '5 × 20 mm time-lag fuse data sheet, IEC 60127-2 sheet 5';

describe('opening time at a gate', () => {
  it.each([
    { name: 'blade 10 A, 160 %', amps: 16, rating: 10, family: 'blade', fromS: 0.25, toS: 50, source: gates },
    { name: 'blade 10 A, 200 %', amps: 20, rating: 10, family: 'blade', fromS: 0.15, toS: 5, source: gates },
    { name: 'blade 40 A, 135 %', amps: 54, rating: 40, family: 'blade', fromS: 0.75, toS: 600, source: gates },
    { name: 'blade 35 A, 350 %', amps: 122.5, rating: 35, family: 'blade', fromS: 0.08, toS: 0.5, source: gates },
    { name: 'large blade 50 A, 135 %', amps: 67.5, rating: 50, family: 'blade', fromS: 60, toS: 1800, source: gates },
    { name: 'large blade 60 A, 200 %', amps: 120, rating: 60, family: 'blade', fromS: 2, toS: 50, source: gates },
    { name: 'blade 10 A, 135 %', amps: 13.5, rating: 10, family: 'blade', fromS: 0.75, toS: 600, source: memory },
    { name: 'blade 10 A, 350 %', amps: 35, rating: 10, family: 'blade', fromS: 0.04, toS: 0.5, source: memory },
    { name: 'blade 10 A, 600 %', amps: 60, rating: 10, family: 'blade', fromS: 0, toS: 0.1, source: memory },
    { name: 'quick 2 A, 275 %', amps: 5.5, rating: 2, family: 'glass-fast', fromS: 0.05, toS: 2, source: quick },
    { name: 'quick 2 A, 400 %', amps: 8, rating: 2, family: 'glass-fast', fromS: 0.01, toS: 0.3, source: quick },
    { name: 'quick 10 A, 400 %', amps: 40, rating: 10, family: 'glass-fast', fromS: 0.01, toS: 0.4, source: quick },
    { name: 'quick 2 A, 1000 %', amps: 20, rating: 2, family: 'glass-fast', fromS: 0, toS: 0.02, source: quick },
    { name: 'time-lag 2 A, 275 %', amps: 5.5, rating: 2, family: 'glass-slow', fromS: 1, toS: 80, source: slow },
    { name: 'time-lag 5 A, 400 %', amps: 20, rating: 5, family: 'glass-slow', fromS: 0.15, toS: 5, source: slow },
    { name: 'time-lag 2 A, 400 %', amps: 8, rating: 2, family: 'glass-slow', fromS: 0.095, toS: 5, source: slow },
    { name: 'time-lag 5 A, 1000 %', amps: 50, rating: 5, family: 'glass-slow', fromS: 0.02, toS: 0.1, source: slow },
  ] as const)('$name ($source)', ({ amps, rating, family, fromS, toS }) => {
    expect(openingTime(amps, rating, family)).toEqual({ fromS, toS });
  });

  it.each([
    { name: 'blade 10 A, 110 %', amps: 11, rating: 10, family: 'blade', source: memory },
    { name: 'blade 40 A, 100 %', amps: 40, rating: 40, family: 'blade', source: gates },
    { name: 'quick 2 A, 150 %', amps: 3, rating: 2, family: 'glass-fast', source: quick },
    { name: 'time-lag 2 A, 150 %', amps: 3, rating: 2, family: 'glass-slow', source: slow },
  ] as const)('$name holds ($source)', ({ amps, rating, family }) => {
    expect(openingTime(amps, rating, family)).toBeNull();
  });

  it.each([
    { name: 'quick 2 A, 210 %', amps: 4.2, rating: 2, family: 'glass-fast', toS: 1800, source: quick },
    { name: 'time-lag 5 A, 210 %', amps: 10.5, rating: 5, family: 'glass-slow', toS: 1800, source: slow },
  ] as const)('$name opens within half an hour ($source)', ({ amps, rating, family, toS }) => {
    expect(openingTime(amps, rating, family)?.toS).toBe(toS);
  });
});

describe('series and colours', () => {
  it.each([
    [3, 'violet'],
    [4, 'pink'],
    [5, 'tan'],
    [7.5, 'brown'],
    [10, 'red'],
    [15, 'light blue'],
    [20, 'yellow'],
    [25, 'clear'],
    [30, 'light green'],
    [40, 'orange'],
  ])('a %d A blade fuse is %s (SAE J1284)', (rating, colour) => {
    expect(fuseColour(rating)).toBe(colour);
  });

  it('glass fuses come in the preferred ratings of IEC 60127-2', () => {
    const printed = [0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10];
    expect(fuseRatings['glass-fast'].filter((rating) => rating >= 0.4)).toEqual(printed);
  });
});
