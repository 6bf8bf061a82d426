import { describe, expect, it } from 'vitest';
import {
  awgAreaMm2,
  awgDiameterMm,
  resistanceAt,
  wireLimitAmps,
  wireOhmsPerM,
  wireUpperAmps,
} from '../../core/catalog/wire/wire.ts';

const handbook = 'NBS Handbook 100, copper wire tables, 20 °C';

describe('gauge sizes', () => {
  it.each([
    { name: 'AWG 10, inches', given: awgDiameterMm(10) / 25.4, expect: 0.10189, tolerance: 0.00001, source: handbook },
    { name: 'AWG 36, mm', given: awgDiameterMm(36), expect: 0.127, tolerance: 1e-9, source: 'ASTM B258, definition' },
    { name: 'AWG 4/0, mm', given: awgDiameterMm(-3), expect: 11.684, tolerance: 1e-9, source: 'ASTM B258, definition' },
    {
      name: 'ratio of neighbours',
      given: awgDiameterMm(11) / awgDiameterMm(12),
      expect: 1.1229322,
      tolerance: 5e-8,
      source: 'NBS Handbook 100, 2.1',
    },
    {
      name: 'AWG 12, circular mils',
      given: (awgDiameterMm(12) / 0.0254) ** 2,
      expect: 6529,
      tolerance: 1,
      source: handbook,
    },
    {
      name: 'AWG 12, mm²',
      given: awgAreaMm2(12),
      expect: 3.3088,
      tolerance: 5e-5,
      source: 'worked by hand from the ASTM B258 definition',
    },
  ])('$name', (row) => {
    expect(Math.abs(row.given - row.expect)).toBeLessThanOrEqual(row.tolerance);
  });
});

/** `[AWG, Ω per 1000 feet as printed]`: NBS Handbook 100; one in the last printed place as tolerance. */
const ohmsPer1000Feet: readonly (readonly [number, string])[] = [
  [-3, '0.0490'],
  [-2, '0.0618'],
  [-1, '0.0780'],
  [0, '0.0983'],
  [1, '0.1240'],
  [2, '0.1563'],
  [3, '0.1970'],
  [4, '0.2485'],
  [6, '0.3951'],
  [8, '0.6282'],
  [10, '0.9989'],
  [12, '1.588'],
  [13, '2.003'],
  [14, '2.525'],
  [15, '3.184'],
  [16, '4.016'],
  [17, '5.064'],
  [18, '6.385'],
  [20, '10.15'],
  [22, '16.14'],
  [24, '25.67'],
  [26, '40.81'],
  [28, '64.9'],
  [30, '103.2'],
];

describe(`ohms per 1000 feet: ${handbook}`, () => {
  it.each(ohmsPer1000Feet)('AWG %i: %s', (awg, printed) => {
    const lastPlace = 10 ** -(printed.split('.')[1]?.length ?? 0);
    expect(Math.abs(wireOhmsPerM({ awg }) * 304.8 - Number(printed))).toBeLessThanOrEqual(lastPlace);
  });
});

/** `[mm², Ω/km]`: largest values at 20 °C for plain copper. */
const class5: readonly (readonly [number, number, string])[] = [
  [0.14, 134, 'DIN VDE 0295, class 5'],
  [0.25, 76, 'DIN VDE 0295, class 5'],
  [0.5, 39, 'IEC 60228 table 3, class 5'],
  [1, 19.5, 'IEC 60228 table 3, class 5'],
  [1.5, 13.3, 'IEC 60228 table 3, class 5'],
  [2.5, 7.98, 'IEC 60228 table 3, class 5'],
  [6, 3.3, 'IEC 60228 table 3, class 5'],
  [16, 1.21, 'IEC 60228 table 3, class 5'],
];

describe('metric wire', () => {
  it.each(class5)('%d mm² has %d Ω/km (%s)', (mm2, ohmsPerKm) => {
    expect(wireOhmsPerM({ mm2 }) * 1000).toBeCloseTo(ohmsPerKm, 9);
  });

  it('an area that the table does not list follows from 1/58 Ω·mm²/m (IEC 60028)', () => {
    expect(wireOhmsPerM({ mm2: 2 })).toBeCloseTo(1 / 116, 12);
  });
});

describe('temperature', () => {
  it.each([
    {
      name: '75 °C over 20 °C',
      given: resistanceAt(1, 75),
      expect: 309.5 / 254.5,
      tolerance: 1e-12,
      source: 'AC 43.13-1B, 11-66: constants 234.5 and 254.5',
    },
    {
      name: '75 °C by the coefficient at 20 °C',
      given: resistanceAt(1, 75),
      expect: 1 + 0.00393 * 55,
      tolerance: 1e-4,
      source: 'NBS Handbook 100: 0.00393 per kelvin',
    },
    {
      // The table rounds its law to 250 / (230 + t), which is half a percent off at most.
      name: 'from 50 °C back to 20 °C',
      given: 1 / resistanceAt(1, 50),
      expect: 0.893,
      tolerance: 0.005 * 0.893,
      source: 'IEC 60228, temperature factors',
    },
    {
      name: 'AWG 12 at 60 °C, Ω/km',
      given: resistanceAt(wireOhmsPerM({ awg: 12 }), 60) * 1000,
      expect: (1.588 / 0.3048) * (294.5 / 254.5),
      tolerance: 0.002,
      source: 'NBS Handbook 100 for 20 °C, AC 43.13-1B, 11-66, for 60 °C',
    },
  ])('$name ($source)', (row) => {
    expect(Math.abs(row.given - row.expect)).toBeLessThanOrEqual(row.tolerance);
  });
});

const nec = 'NEC 240.4(D), copper';
const ac3 = 'AC 43.13-1B table 11-3, fuse';

describe('what a fuse may let through a wire', () => {
  it.each([
    { name: 'AWG 18', given: { awg: 18 }, expect: 7, source: nec },
    { name: 'AWG 16', given: { awg: 16 }, expect: 10, source: nec },
    // AC 43.13-1B table 11-3 has the same 15, 20 and 30 A for these three.
    { name: 'AWG 14', given: { awg: 14 }, expect: 15, source: nec },
    { name: 'AWG 12', given: { awg: 12 }, expect: 20, source: nec },
    { name: 'AWG 10', given: { awg: 10 }, expect: 30, source: nec },
    { name: 'AWG 22', given: { awg: 22 }, expect: 5, source: ac3 },
    { name: 'AWG 20', given: { awg: 20 }, expect: 5, source: ac3 },
    { name: 'AWG 8', given: { awg: 8 }, expect: 50, source: ac3 },
    { name: 'AWG 6', given: { awg: 6 }, expect: 70, source: ac3 },
    { name: 'AWG 4', given: { awg: 4 }, expect: 70, source: ac3 },
    { name: 'AWG 2', given: { awg: 2 }, expect: 100, source: ac3 },
    { name: 'AWG 24', given: { awg: 24 }, expect: 2.5, source: 'AC 43.13-1B table 11-9' },
  ])('$name: $expect A ($source)', ({ given, expect: amps }) => {
    expect(wireLimitAmps(given)?.amps).toBe(amps);
  });
});

describe('33 CFR 183.425 table 5, 30 °C', () => {
  it.each([
    { awg: 18, celsius: 60, expect: 10 },
    { awg: 14, celsius: 105, expect: 35 },
    { awg: 10, celsius: 60, expect: 40 },
    { awg: 10, celsius: 105, expect: 60 },
    { awg: 8, celsius: 75, expect: 65 },
    { awg: 2, celsius: 200, expect: 240 },
  ] as const)('AWG $awg at $celsius °C: $expect A', ({ awg, celsius, expect: amps }) => {
    expect(wireUpperAmps({ awg, insulationCelsius: celsius })?.amps).toBe(amps);
  });
});
