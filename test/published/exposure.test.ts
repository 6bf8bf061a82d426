import { describe, expect, it } from 'vitest';
import { averagedWatts, distanceToKeep, type Ground } from '../../core/rf/exposure.ts';
import { type ExposureTier, exposureLimit, nearFieldM } from '../../core/rf/exposure-limits.ts';
import { checkRows, type Row } from './rows.ts';

const feetM = 0.3048;

/** mW/cm² at a distance in metres, by the distance at which there is one: it falls as the square (OET Bulletin 65, section 2). */
const densityAt = (radiated: Parameters<typeof distanceToKeep>[0], metres: number): number =>
  (distanceToKeep(radiated, 1) / metres) ** 2;
const limitAt = (mhz: number, tier: ExposureTier): number => exposureLimit(mhz * 1e6, tier)?.mwPerCm2 ?? Number.NaN;
const table = '47 CFR 1.1310(e), table 1';

/** `[MHz, controlled, uncontrolled]` in mW/cm². */
const limits: readonly (readonly [number, string, string, string])[] = [
  [1, '100', '100', table],
  [2, '100', '45', `${table}; calculation: 180 / f²`],
  [3.75, '64.00', '12.80', 'amateur station evaluation page after OET Bulletin 65'],
  [7.15, '17.605', '3.521', `${table}; calculation: 900 / f², 180 / f²`],
  [14, '4.592', '0.918', `${table}; calculation: 900 / f², 180 / f²`],
  [29, '1.070', '0.214', 'worked output after OET Bulletin 65'],
  [50.1, '1.0', '0.2', table],
  [146, '1.0', '0.2', table],
  [440, '1.467', '0.2933', `${table}; calculation: f / 300, f / 1500`],
  [1296, '4.32', '0.864', `${table}; calculation: f / 300, f / 1500`],
  [2400, '5', '1.0', table],
];
checkRows(
  'limits',
  limits.flatMap(([mhz, controlled, uncontrolled, source]): Row[] => [
    { name: `${mhz} MHz, controlled`, given: limitAt(mhz, 'controlled'), printed: controlled, source },
    { name: `${mhz} MHz, uncontrolled`, given: limitAt(mhz, 'uncontrolled'), printed: uncontrolled, source },
  ]),
);

describe('limits', () => {
  it('are averaged over 6 and 30 minutes (47 CFR 1.1310, as quoted in a report on averaging)', () => {
    expect(exposureLimit(14e6, 'controlled')?.averagingMin).toBe(6);
    expect(exposureLimit(14e6, 'uncontrolled')?.averagingMin).toBe(30);
  });
  it(`end at 0.3 MHz and 100 GHz (${table})`, () => {
    expect(exposureLimit(0.137e6, 'controlled')).toBeNull();
    expect(exposureLimit(0.3e6, 'controlled')?.mwPerCm2).toBe(100);
    expect(exposureLimit(100e9, 'uncontrolled')?.mwPerCm2).toBe(1);
    expect(exposureLimit(101e9, 'uncontrolled')).toBeNull();
  });
});

interface Checked {
  readonly watts: number;
  readonly gainDbi: number;
  readonly distanceM: number;
  readonly mhz: number;
  readonly ground: Ground;
  /** As printed, mW/cm². */
  readonly density: string;
  /** Limits and distances in feet as printed, controlled and uncontrolled; null where they aren't. */
  readonly limits: readonly [string, string] | null;
  readonly feet: readonly [string, string];
  readonly source: string;
}

const page = 'amateur station evaluation page after OET Bulletin 65';
const calculator = 'published answers of a calculator after OET Bulletin 65';
const checked: readonly Checked[] = [
  {
    watts: 1500,
    gainDbi: 2.2,
    distanceM: 30.48,
    mhz: 3.75,
    ground: 'common',
    density: '0.0546',
    limits: ['64.00', '12.81'],
    feet: ['2.97', '6.58'],
    source: page,
  },
  {
    watts: 123,
    gainDbi: 2,
    distanceM: 10,
    mhz: 420,
    ground: 'common',
    density: '0.0398',
    limits: ['1.41', '0.29'],
    feet: ['5.58', '12.41'],
    source: calculator,
  },
  {
    watts: 456,
    gainDbi: 3,
    distanceM: 17,
    mhz: 123,
    ground: 'common',
    density: '0.0642',
    limits: ['1.01', '0.21'],
    feet: ['14.17', '31.63'],
    source: calculator,
  },
  {
    watts: 111,
    gainDbi: 3.1,
    distanceM: 11,
    mhz: 187,
    ground: 'none',
    density: '0.015',
    limits: ['1.01', '0.21'],
    feet: ['4.46', '9.9'],
    source: calculator,
  },
  {
    watts: 1500,
    gainDbi: 2.2,
    distanceM: 2,
    mhz: 146,
    ground: 'none',
    density: '4.9525',
    limits: null,
    feet: ['14.65', '32.7'],
    source: calculator,
  },
  {
    watts: 200,
    gainDbi: 2.2,
    distanceM: 2,
    mhz: 3.9,
    ground: 'common',
    density: '1.6905',
    limits: ['59.18', '11.84'],
    feet: ['1.16', '2.53'],
    source: calculator,
  },
  {
    watts: 1500,
    gainDbi: 2.2,
    distanceM: 2,
    mhz: 3.9,
    ground: 'common',
    density: '12.6784',
    limits: null,
    feet: ['3.09', '6.84'],
    source: calculator,
  },
  {
    watts: 200,
    gainDbi: 2.2,
    distanceM: 2,
    mhz: 10.11,
    ground: 'common',
    density: '1.6905',
    limits: ['8.81', '1.77'],
    feet: ['2.93', '6.48'],
    source: calculator,
  },
];

// The calculator rounds densities and limits up in the last place and steps its distances: one last place is the
// tolerance of the first two, 3 % or 0.06 ft that of the third.
checkRows(
  'stations worked out elsewhere',
  checked.flatMap(({ watts, gainDbi, distanceM, mhz, ground, source, ...printed }): Row[] => {
    const radiated = { averageWatts: watts, gainDbi, ground };
    const name = `${watts} W, ${gainDbi} dBi, ${mhz} MHz`;
    const tiers = ['controlled', 'uncontrolled'] as const;
    return [
      {
        name: `${name}, at ${distanceM} m`,
        given: densityAt(radiated, distanceM),
        printed: printed.density,
        tolerance: 1.0001e-4,
        source,
      },
      ...tiers.flatMap((tier, i) => {
        const limit = printed.limits?.[i];
        const feet = printed.feet[i] ?? '';
        return [
          ...(limit
            ? [{ name: `${name}, ${tier} limit`, given: limitAt(mhz, tier), printed: limit, tolerance: 0.0101, source }]
            : []),
          {
            name: `${name}, ${tier} feet`,
            given: distanceToKeep(radiated, limitAt(mhz, tier)) / feetM,
            printed: feet,
            tolerance: Math.max(0.06, 0.03 * Number(feet)),
            source,
          },
        ];
      }),
    ];
  }),
);

describe(`verdicts (${calculator})`, () => {
  const densityAt2m = (ground: Ground) => densityAt({ averageWatts: 1500, gainDbi: 2.2, ground }, 2);
  it('1500 W at 2 m on 146 MHz fails both tiers', () => {
    expect(densityAt2m('none')).toBeGreaterThan(limitAt(146, 'controlled'));
    expect(densityAt2m('none')).toBeGreaterThan(limitAt(146, 'uncontrolled'));
  });
  it('1500 W at 2 m on 3.9 MHz passes the controlled tier and fails the other', () => {
    expect(densityAt2m('common')).toBeLessThan(limitAt(3.9, 'controlled'));
    expect(densityAt2m('common')).toBeGreaterThan(limitAt(3.9, 'uncontrolled'));
  });
});

const array = { gainDbi: 24, ground: 'common' } as const;
const arrayFeet = (averageWatts: number, tier: ExposureTier): number =>
  distanceToKeep({ ...array, averageWatts }, limitAt(144, tier)) / feetM;
const arrayTable = 'amateur RF safety table, 24 dBi array on 144 MHz';
// Left out: the uncontrolled feet of 150 W and 500 W, which can't be read to the last digit.
checkRows('an array on 144 MHz, feet', [
  { name: '150 W, controlled', given: arrayFeet(150, 'controlled'), printed: '90', tolerance: 1, source: arrayTable },
  { name: '500 W, controlled', given: arrayFeet(500, 'controlled'), printed: '166', tolerance: 1, source: arrayTable },
  {
    name: '1500 W, controlled',
    given: arrayFeet(1500, 'controlled'),
    printed: '287',
    tolerance: 1,
    source: arrayTable,
  },
  {
    name: '1500 W, uncontrolled',
    given: arrayFeet(1500, 'uncontrolled'),
    printed: '642',
    tolerance: 1,
    source: arrayTable,
  },
]);

const tenMetre = {
  averageWatts: averagedWatts({ pepWatts: 60, lineLossDb: 0, duty: 0.2, onShare: 0.5 }),
  gainDbi: 2.2,
  ground: 'common',
} as const;
const worked = 'worked output after OET Bulletin 65: 60 W, half of the time, duty 20 %, 29 MHz';
checkRows('60 W of speech on 29 MHz', [
  { name: 'at 6 ft', given: densityAt(tenMetre, 6 * feetM), printed: '0.06065', tolerance: 6.1e-5, source: worked },
  {
    name: 'controlled feet',
    given: distanceToKeep(tenMetre, limitAt(29, 'controlled')) / feetM,
    printed: '1.428',
    tolerance: 1.5e-3,
    source: worked,
  },
  {
    name: 'uncontrolled feet',
    given: distanceToKeep(tenMetre, limitAt(29, 'uncontrolled')) / feetM,
    printed: '3.194',
    tolerance: 3.2e-3,
    source: worked,
  },
]);

const home = (
  name: string,
  pepWatts: number,
  duty: number,
  share: number,
  mhz: number,
  tier: ExposureTier,
  printed: string,
): Row => ({
  name: `${name}, ${tier} metres`,
  given: distanceToKeep(
    { averageWatts: averagedWatts({ pepWatts, lineLossDb: 0, duty, onShare: share }), gainDbi: 2.15, ground: 'common' },
    limitAt(mhz, tier),
  ),
  printed,
  source: 'calculation: √(0.64 EIRP / (π S)), duty of OET Bulletin 65 Supplement B',
});
checkRows('a dipole at home', [
  home('5 W keyed, 14.06 MHz', 5, 0.4, 1, 14.06, 'uncontrolled', '0.27'),
  home('100 W keyed half the time, 14.06 MHz', 100, 0.4, 0.5, 14.06, 'uncontrolled', '0.86'),
  home('100 W keyed half the time, 14.06 MHz', 100, 0.4, 0.5, 14.06, 'controlled', '0.38'),
  home('100 W speech half the time, 28.4 MHz', 100, 0.2, 0.5, 28.4, 'uncontrolled', '1.22'),
  home('100 W speech half the time, 28.4 MHz', 100, 0.2, 0.5, 28.4, 'controlled', '0.55'),
  {
    name: 'a mirror under it doubles the distance',
    given:
      distanceToKeep({ averageWatts: 10, gainDbi: 0, ground: 'mirror' }, 1) /
      distanceToKeep({ averageWatts: 10, gainDbi: 0, ground: 'none' }, 1),
    printed: '2.000',
    source: 'OET Bulletin 65, section 2: factor 4 on power density, from memory; calculation: √4',
  },
  {
    name: '100 W behind 3 dB of line, W',
    given: averagedWatts({ pepWatts: 100, lineLossDb: 3, duty: 1, onShare: 1 }),
    printed: '50.12',
    source: 'calculation: 100 × 10^(-0.3)',
  },
]);

/** `[MHz, λ/2π in metres]`: closer than this nobody is exempt from an evaluation, 47 CFR 1.1307(b)(3)(i)(C). */
const nearFields: readonly (readonly [number, string])[] = [
  [1.9, '25.11'],
  [3.75, '12.72'],
  [7.15, '6.67'],
  [10.125, '4.71'],
  [14.175, '3.37'],
  [18.1, '2.64'],
  [21.2, '2.25'],
  [24.94, '1.91'],
  [28.5, '1.67'],
  [50.1, '0.95'],
  [146, '0.33'],
  [440, '0.11'],
];
checkRows(
  'near field',
  nearFields.map(([mhz, printed]) => ({
    name: `${mhz} MHz, λ/2π`,
    given: nearFieldM(mhz * 1e6),
    printed,
    source: 'calculation: c / 2πf',
  })),
);
