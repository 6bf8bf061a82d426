import { describe, expect, it } from 'vitest';
import {
  fuseBreakingAmps,
  fuseColour,
  fuseOhms,
  fuseRatings,
  nextFuse,
  openingTime,
} from '../../core/catalog/wire/fuses.ts';

describe('fuse resistance', () => {
  it('between two rows is on a straight line in logarithms', () => {
    // √(3 × 5) is halfway in logarithms between 3 A and 5 A, and so is its resistance.
    expect(fuseOhms(Math.sqrt(15))).toBeCloseTo(Math.sqrt(0.0311 * 0.01785), 9);
  });

  it('outside the table keeps the voltage of the nearest row', () => {
    expect(80 * fuseOhms(80)).toBeCloseTo(50 * fuseOhms(50), 9);
    expect(0.2 * fuseOhms(0.2, 'glass-fast')).toBeCloseTo(0.4 * fuseOhms(0.4, 'glass-fast'), 9);
    expect(fuseOhms(0)).toBe(0);
  });

  it('falls as the rating rises, in every family', () => {
    for (const family of ['blade', 'glass-fast', 'glass-slow'] as const) {
      const ohms = fuseRatings[family].map((rating) => fuseOhms(rating, family));
      expect(ohms).toEqual(ohms.toSorted((a, b) => b - a));
    }
  });
});

describe('opening time between the gates', () => {
  it.each([
    { amps: 9, rating: 10, expect: null },
    { amps: 12, rating: 10, expect: { fromS: 0.75, toS: Number.POSITIVE_INFINITY } },
    { amps: 18, rating: 10, expect: { fromS: 0.15, toS: 50 } },
    { amps: 169.3, rating: 10, expect: { fromS: 0, toS: 0.1 } },
  ])('$amps A through 10 A', ({ amps, rating, expect: time }) => {
    expect(openingTime(amps, rating)).toEqual(time);
  });
});

describe('standard ratings', () => {
  it.each([
    { amps: 0.05, family: 'blade', expect: 1 },
    { amps: 5, family: 'blade', expect: 5 },
    { amps: 5.1, family: 'blade', expect: 7.5 },
    { amps: 81, family: 'blade', expect: null },
    { amps: 2.6, family: 'glass-fast', expect: 3.15 },
    { amps: 2.6, family: 'glass-slow', expect: 3.15 },
  ] as const)('the next fuse for $amps A ($family) is $expect', ({ amps, family, expect: rating }) => {
    expect(nextFuse(amps, family)).toBe(rating);
  });

  it('glass fuses have no colour and break little', () => {
    expect(fuseColour(5, 'glass-fast')).toBeNull();
    expect(fuseBreakingAmps(2, 'glass-fast')).toBe(35);
    expect(fuseBreakingAmps(10, 'glass-slow')).toBe(100);
    expect(fuseBreakingAmps(10, 'blade')).toBe(1000);
  });
});
