import { describe, expect, it } from 'vitest';
import { peukertHours, restVolts } from '../../core/catalog/battery.ts';

describe('volts at rest', () => {
  // BCI open-circuit voltages of a flooded 12 V battery at 26.7 °C: the table's own points.
  it.each([
    [1, 12.65],
    [0.75, 12.45],
    [0.5, 12.24],
    [0.25, 12.06],
  ])('flooded lead-acid at %d of its charge', (charge, volts) => expect(restVolts('leadAcid', charge)).toBe(volts));
  // Published rest table of a 12.8 V LiFePO4 battery.
  it.each([
    [0.2, 12.8],
    [0.4, 13.2],
    [0.9, 13.4],
  ])('LiFePO4 at %d of its charge', (charge, volts) => expect(restVolts('lifepo4', charge)).toBe(volts));
});

describe('Peukert, normalised to the 20-hour capacity: t = H (C/(I H))^k', () => {
  // Calculation: 100 Ah, k 1.2: 20 h at 5 A, 20/2^1.2 at 10 A, 20/4^1.2 at 20 A.
  it.each([
    [5, 20],
    [10, 20 / 2 ** 1.2],
    [20, 20 / 4 ** 1.2],
  ])('%d A', (amps, hours) => expect(peukertHours(100, amps, 1.2)).toBeCloseTo(hours, 9));
  it('no current lasts for ever', () => expect(peukertHours(100, 0, 1.2)).toBe(Number.POSITIVE_INFINITY));
  // Battery monitor manual, two-test formula: 20 h at 5 A and 7.5 h at 10 A give 1.415.
  it('of a battery with two tests', () => expect(peukertHours(100, 10, 1.41504)).toBeCloseTo(7.5, 4));
  // Data sheet of a 28 Ah glass-mat battery, 1999: 20 h at 1.4 A, 1 h at 21 A, by which its exponent is 1.106.
  it('of a glass-mat battery', () => expect(peukertHours(28, 21, 1.1062)).toBeCloseTo(1, 2));
});
