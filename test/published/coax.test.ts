import { describe, expect, it } from 'vitest';
import { coaxLossDb } from '../../core/catalog/cables/coax-loss-db.ts';
import { coaxTypes } from '../../core/catalog/cables/coax-types.ts';

const hundredFeet = 30.48;
const sheet = (name: string) => `${name} data sheet, typical, attenuation table`;
const handbook = 'ARRL general class licence manual, corrected table 6-1';
const closedForm = 'RG-213/U data sheet with 0.1679 √f + 0.0585 f dB/m, f in GHz';

const lossOf = (type: string, lengthM: number, mhz: number): number => {
  const coax = coaxTypes[type];
  if (!coax) throw new Error(`no coax ${type}`);
  return coaxLossDb(coax, lengthM, mhz * 1e6);
};

/** `tolerance` is in dB where the sheet's own points are met, a share where another source describes the type. */
describe('attenuation as printed', () => {
  it.each([
    { type: 'rg-58', mhz: 10, expect: 1.5, tolerance: 0.05, source: sheet('RG-58A/U') },
    { type: 'rg-58', mhz: 100, expect: 5.4, tolerance: 0.05, source: sheet('RG-58A/U') },
    { type: 'rg-213', mhz: 50, expect: 1.3, tolerance: 0.05, source: sheet('RG-213/U') },
    { type: 'rg-174', mhz: 10, expect: 3.3, tolerance: 0.05, source: sheet('RG-174/U') },
    { type: 'rg-8x', mhz: 50, expect: 2.1, tolerance: 0.05, source: sheet('RG-8X') },
    { type: 'low-loss-10mm', mhz: 30, expect: 0.7, tolerance: 0.05, source: sheet('low-loss 0.405 inch') },
    { type: 'low-loss-10mm', mhz: 150, expect: 1.5, tolerance: 0.05, source: sheet('low-loss 0.405 inch') },
    { type: 'low-loss-10mm', mhz: 450, expect: 2.7, tolerance: 0.05, source: sheet('low-loss 0.405 inch') },
    { type: 'half-inch', mhz: 10, expect: 0.205, tolerance: 0.001, source: sheet('half-inch corrugated') },
    { type: 'half-inch', mhz: 30, expect: 0.357, tolerance: 0.001, source: sheet('half-inch corrugated') },
    { type: 'half-inch', mhz: 150, expect: 0.815, tolerance: 0.001, source: sheet('half-inch corrugated') },
  ])('$type at $mhz MHz: $expect dB per 100 ft ($source)', ({ type, mhz, expect: db, tolerance }) => {
    expect(Math.abs(lossOf(type, hundredFeet, mhz) - db)).toBeLessThanOrEqual(tolerance);
  });

  it.each([
    { type: 'rg-58', mhz: 30, expect: 2.47, source: handbook },
    { type: 'rg-213', mhz: 30, expect: 1.08, source: handbook },
    { type: 'rg-213', mhz: 150, expect: 2.53, source: handbook },
    { type: 'rg-8x', mhz: 30, expect: 1.96, source: handbook },
    { type: 'rg-8x', mhz: 150, expect: 4.53, source: handbook },
    { type: 'rg-174', mhz: 30, expect: 4.56, source: handbook },
    { type: 'rg-174', mhz: 150, expect: 10.3, source: handbook },
    { type: 'low-loss-10mm', mhz: 30, expect: 0.68, source: handbook },
    { type: 'low-loss-10mm', mhz: 150, expect: 1.58, source: handbook },
    { type: 'rg-213', mhz: 100, expect: 5.895 / 3.28084, source: closedForm },
    { type: 'rg-213', mhz: 14, expect: 2.069 / 3.28084, source: `${closedForm}, below its stated range` },
  ])('$type at $mhz MHz within its tolerance of another source ($source)', ({ type, mhz, expect: db }) => {
    const share = coaxTypes[type]?.tolerance ?? 0;
    expect(Math.abs(lossOf(type, hundredFeet, mhz) / db - 1)).toBeLessThanOrEqual(share);
  });

  it('between two points a straight line in logarithms: RG-58 at 14 MHz, worked by hand from the points', () => {
    // log(1.4) / log(5) = 0.20906; 4.9213 × (12.1391 / 4.9213)^0.20906 = 5.945 dB per 100 m.
    expect(lossOf('rg-58', 100, 14)).toBeCloseTo(5.945, 2);
    // 5 W into 30 m of it: 5 × 10^(-0.1783).
    expect(5 * 10 ** (-lossOf('rg-58', 30, 14) / 10)).toBeCloseTo(3.316, 2);
  });

  it('below the first point it falls with the square root of frequency', () => {
    expect(lossOf('rg-58', 100, 0.25)).toBeCloseTo(lossOf('rg-58', 100, 1) / 2, 9);
    expect(lossOf('rg-58', 100, 0)).toBe(0);
  });
});
