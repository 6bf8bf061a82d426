import { describe, expect, it } from 'vitest';
import { type Carrier, categoryALimit, judgeHarmonic, part97Limit } from '../../core/rf/harmonics.ts';
import { checkRows, type Row } from './rows.ts';

const partD = '47 CFR 97.307(d)';
const partE = '47 CFR 97.307(e)';
const itu = 'Recommendation ITU-R SM.329, category A, as a national ordinance has it (NN 150/22, article 22(5))';

const dbmOf = (carrier: Carrier, old = false): number => part97Limit(carrier, old)?.dbm ?? Number.NaN;
const belowOf = (carrier: Carrier, old = false): number => part97Limit(carrier, old)?.belowDb ?? Number.NaN;
const microwatts = (dbm: number): number => 1000 * 10 ** (dbm / 10);

/** `[W, limit of part 97 in dBm and mW, attenuation of category A in dB, its limit in dBm]`, below 30 MHz. */
const hf: readonly (readonly [number, string, string, string, string])[] = [
  [0.5, '-16.01', '0.0251', '39.99', '-13.00'],
  [1, '-13.00', '0.0501', '43.00', '-13.00'],
  [2, '-9.99', '0.1002', '46.01', '-13.00'],
  [5, '-6.01', '0.2506', '49.99', '-13.00'],
  [10, '-3.00', '0.5012', '50.00', '-10.00'],
  [25, '0.98', '1.2530', '50.00', '-6.02'],
  [100, '7.00', '5.0119', '50.00', '0.00'],
  [500, '13.99', '25.0594', '50.00', '6.99'],
  [1500, '18.76', '75.1781', '50.00', '11.76'],
];
checkRows(
  'below 30 MHz',
  hf.flatMap(([watts, dbm, milliwatts, belowDb, ituDbm]): Row[] => {
    const carrier = { watts, hertz: 14.06e6 };
    const category = categoryALimit(carrier);
    return [
      {
        name: `${watts} W, part 97, dBm`,
        given: dbmOf(carrier),
        printed: dbm,
        source: `${partD}; calculation: P - 43 dB`,
      },
      {
        name: `${watts} W, part 97, mW`,
        given: microwatts(dbmOf(carrier)) / 1000,
        printed: milliwatts,
        source: `${partD}; calculation: P / 10^4.3`,
      },
      {
        name: `${watts} W, category A, dB`,
        given: category.belowDb,
        printed: belowDb,
        source: `${itu}; calculation: 43 + 10 log P, 50 at most`,
      },
      {
        name: `${watts} W, category A, dBm`,
        given: category.dbm,
        printed: ituDbm,
        source: `${itu}; calculation`,
      },
    ];
  }),
);

const list = 'RFI mailing list, 20 May 1998, reading of 97.307(e)';
checkRows('30 to 225 MHz', [
  {
    name: '25 W on 50 MHz, µW',
    given: microwatts(dbmOf({ watts: 25, hertz: 50e6 })),
    printed: '25',
    tolerance: 1e-6,
    source: partE,
  },
  {
    name: '25 W on 50 MHz, dB',
    given: belowOf({ watts: 25, hertz: 50e6 }),
    printed: '60',
    tolerance: 1e-6,
    source: partE,
  },
  {
    name: '100 W on 50 MHz, dB',
    given: belowOf({ watts: 100, hertz: 50e6 }),
    printed: '60',
    tolerance: 1e-6,
    source: partE,
  },
  {
    name: '5 W on 146 MHz, µW',
    given: microwatts(dbmOf({ watts: 5, hertz: 146e6 })),
    printed: '25',
    tolerance: 1e-6,
    source: partE,
  },
  {
    name: '0.2 W on 146 MHz, dB',
    given: belowOf({ watts: 0.2, hertz: 146e6 }),
    printed: '40',
    tolerance: 1e-6,
    source: list,
  },
  {
    name: '0.05 W on 146 MHz, µW',
    given: microwatts(dbmOf({ watts: 0.05, hertz: 146e6 })),
    printed: '10',
    tolerance: 1e-6,
    source: list,
  },
  {
    name: '0.05 W on 146 MHz, dB',
    given: belowOf({ watts: 0.05, hertz: 146e6 }),
    printed: '36.99',
    source: `${list}; calculation: 50 + 10 log P`,
  },
  {
    name: '100 W on 146 MHz, category A, dB',
    given: categoryALimit({ watts: 100, hertz: 146e6 }).belowDb,
    printed: '63',
    tolerance: 1e-6,
    source: `${itu}; calculation: 43 + 20`,
  },
  {
    name: '1500 W on 146 MHz, category A, dB',
    given: categoryALimit({ watts: 1500, hertz: 146e6 }).belowDb,
    printed: '70',
    tolerance: 1e-6,
    source: itu,
  },
]);

checkRows('installed on or before 1 January 2003', [
  { name: '4 W, dB', given: belowOf({ watts: 4, hertz: 7e6 }, true), printed: '30', tolerance: 1e-6, source: partD },
  {
    name: '100 W, dB',
    given: belowOf({ watts: 100, hertz: 7e6 }, true),
    printed: '40',
    tolerance: 1e-6,
    source: partD,
  },
  {
    name: '1500 W, mW',
    given: microwatts(dbmOf({ watts: 1500, hertz: 7e6 }, true)) / 1000,
    printed: '50',
    tolerance: 1e-6,
    source: partD,
  },
  {
    name: '1500 W, dB',
    given: belowOf({ watts: 1500, hertz: 7e6 }, true),
    printed: '44.77',
    source: `${list}; calculation: 13 + 10 log P`,
  },
]);

checkRows('after that date', [
  {
    name: 'below 30 MHz, dB',
    given: belowOf({ watts: 100, hertz: 14e6 }),
    printed: '43',
    tolerance: 1e-6,
    source: 'US amateur Extra class question pool 2020-2024, E1C10',
  },
]);

describe('where the rule ends', () => {
  it('no figure above 225 MHz (47 CFR 97.307: only (c), as low as practicable)', () => {
    expect(part97Limit({ watts: 5, hertz: 225e6 })).not.toBeNull();
    expect(part97Limit({ watts: 5, hertz: 432e6 })).toBeNull();
    expect(judgeHarmonic({ watts: 5, hertz: 432e6 }, { harmonicDbc: -10 }, part97Limit)).toBeNull();
  });
});

describe('a 7 MHz transmitter of 10 W (page on harmonic suppression of a 7 MHz board)', () => {
  const carrier = { watts: 10, hertz: 7e6 };
  it('a second harmonic of -39 dBc fails by 4 dB', () => {
    const found = judgeHarmonic(carrier, { harmonicDbc: -39 }, part97Limit);
    expect(found?.within).toBe(false);
    expect(found?.marginDb).toBeCloseTo(-4, 9);
  });
  it('-60 dBc, with a trap, passes both rules', () => {
    expect(judgeHarmonic(carrier, { harmonicDbc: -60 }, part97Limit)?.within).toBe(true);
    expect(judgeHarmonic(carrier, { harmonicDbc: -60 }, categoryALimit)?.within).toBe(true);
  });
});

describe('behind a filter (calculation)', () => {
  it('a square wave’s third harmonic, -9.54 dBc (1/3 in voltage), needs 33.46 dB for 43', () => {
    const harmonicDbc = 20 * Math.log10(1 / 3);
    const carrier = { watts: 5, hertz: 7e6 };
    expect(judgeHarmonic(carrier, { harmonicDbc, rejectionDb: 33.4 }, part97Limit)?.within).toBe(false);
    expect(judgeHarmonic(carrier, { harmonicDbc, rejectionDb: 33.5 }, part97Limit)?.within).toBe(true);
  });
  it('what the filter takes from the carrier counts: 40 + 10 dB of rejection less 1 dB of pass loss is 49', () => {
    const found = judgeHarmonic(
      { watts: 100, hertz: 7e6 },
      { harmonicDbc: -40, rejectionDb: 10, passDb: 1 },
      part97Limit,
    );
    expect(found?.belowDb).toBeCloseTo(49, 9);
    expect(found?.marginDb).toBeCloseTo(6, 9);
    expect(found?.dbm).toBeCloseTo(0, 9);
  });
  it('exactly at the limit is within it', () => {
    expect(judgeHarmonic({ watts: 7, hertz: 7e6 }, { harmonicDbc: -43 }, part97Limit)?.within).toBe(true);
  });
});
