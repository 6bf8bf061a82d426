import type { FuseFamily } from '../../station/schema/unit-kind.ts';

/** Ratings of each family, amperes, rising. */
export const fuseRatings: Readonly<Record<FuseFamily, readonly number[]>> = {
  // ISO 8820-3; from 50 A on the large form.
  blade: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80],
  // IEC 60127-2; below 0.4 A from memory.
  'glass-fast': [0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10],
  'glass-slow': [0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10],
};

/** Blade fuse colours: SAE J1284 and ISO 8820-3; 1, 2, 35 A and the large 60, 70, 80 A from memory. */
export const bladeColours: Readonly<Record<number, string>> = {
  1: 'black',
  2: 'grey',
  3: 'violet',
  4: 'pink',
  5: 'tan',
  7.5: 'brown',
  10: 'red',
  15: 'light blue',
  20: 'yellow',
  25: 'clear',
  30: 'light green',
  35: 'blue-green',
  40: 'orange',
  50: 'red (large)',
  60: 'blue (large)',
  70: 'brown (large)',
  80: 'clear (large)',
};

type Row = readonly [amps: number, ohms: number];

/** Typical cold resistance by rating: what a cold element measures; at its rating it has about 1.4 to 1.7 times that. */
export const coldOhms: Readonly<Record<FuseFamily, readonly Row[]>> = {
  // Blade fuse data sheet, typical; 1 and 2 A from memory; 50 A the large form.
  blade: [
    [1, 0.123],
    [2, 0.053],
    [3, 0.0311],
    [5, 0.01785],
    [7.5, 0.01091],
    [10, 0.0077],
    [15, 0.0048],
    [20, 0.00338],
    [25, 0.00252],
    [30, 0.00197],
    [40, 0.00144],
    [50, 0.0011],
  ],
  // 5 × 20 mm quick glass fuse data sheet (IEC 60127-2 sheet 2), typical.
  'glass-fast': [
    [0.4, 0.277],
    [0.5, 0.2065],
    [0.63, 0.19],
    [0.8, 0.1203],
    [1, 0.0964],
    [1.25, 0.0701],
    [1.6, 0.0528],
    [2, 0.0416],
    [2.5, 0.0334],
    [3.15, 0.0224],
    [4, 0.0165],
    [5, 0.0137],
    [6.3, 0.0095],
    [8, 0.0068],
    [10, 0.0063],
  ],
  // 5 × 20 mm time-lag fuse data sheet (IEC 60127-2 sheet 5), typical.
  'glass-slow': [
    [1, 0.2],
    [1.25, 0.14],
    [1.6, 0.1],
    [2, 0.07],
    [2.5, 0.05],
    [3.15, 0.037],
    [4, 0.026],
    [5, 0.019],
    [6.3, 0.013],
    [8, 0.009],
    [10, 0.007],
  ],
};

/**
 * Resistance at the rating over the cold one. Blade data sheets: 109 mV at 10 A and 96 mV at 40 A, 75 mV for a large one
 * of 40 A (1.4 mΩ cold); a straight line in logarithms between the first two. Time-lag glass: the highest of its data
 * sheet (0.1 V at 10 A, 7 mΩ cold). Quick glass: from memory.
 */
export function hotShare(family: FuseFamily, rating: number): number {
  if (family === 'glass-fast') return 1.5;
  if (family === 'glass-slow') return 0.1 / (10 * 0.007);
  if (rating > 40) return 0.075 / (40 * 0.0014);
  const [low, high] = [0.109 / (10 * 0.0077), 0.096 / (40 * 0.00144)];
  const along = Math.log(Math.max(rating, 10) / 10) / Math.log(4);
  return low * (high / low) ** along;
}

/** At so many times the rating it opens within these bounds; `Infinity` where it need not open at all. */
export interface OpeningLimits {
  readonly times: number;
  readonly fromS: number;
  readonly toS: number;
}

/** Up to this share of its rating a blade fuse holds for good, above it it need not (ISO 8820-3, from memory). */
export const holdsUpTo = 1.1;

/** Above this share of its rating it opens for good within ten minutes (ISO 8820-3: 135 % opens in 0.75 to 600 s). */
export const opensAbove = 1.35;

const never = Number.POSITIVE_INFINITY;

/** The standards’ limits of one family and rating, rising; up to the first one it holds. */
export function openingLimitsOf(family: FuseFamily, rating: number): readonly OpeningLimits[] {
  if (family === 'glass-fast') return quickLimits(rating);
  if (family === 'glass-slow') return slowLimits(rating);
  return rating > 40 ? largeBladeLimits : bladeLimits(rating);
}

/**
 * ISO 8820-3 as printed in blade fuse data sheets. Seen: 160 % and 200 % of 10 A, all of 35 and 40 A. From memory: 110 %,
 * 135 %, 350 % and 600 % of 3 to 30 A.
 */
const bladeLimits = (rating: number): readonly OpeningLimits[] =>
  rating >= 35
    ? [
        { times: 1, fromS: 360_000, toS: never },
        { times: opensAbove, fromS: 0.75, toS: 600 },
        { times: 2, fromS: 0.15, toS: 5 },
        { times: 3.5, fromS: 0.08, toS: 0.5 },
        { times: 6, fromS: 0, toS: 0.15 },
      ]
    : [
        { times: holdsUpTo, fromS: 360_000, toS: never },
        { times: opensAbove, fromS: 0.75, toS: 600 },
        { times: 1.6, fromS: 0.25, toS: 50 },
        { times: 2, fromS: 0.15, toS: 5 },
        { times: 3.5, fromS: 0.04, toS: 0.5 },
        { times: 6, fromS: 0, toS: 0.1 },
      ];

/** Large blade fuse data sheet. */
const largeBladeLimits: readonly OpeningLimits[] = [
  { times: 1, fromS: 360_000, toS: never },
  { times: 1.35, fromS: 60, toS: 1800 },
  { times: 2, fromS: 2, toS: 50 },
  { times: 3.5, fromS: 0.2, toS: 7 },
  { times: 6, fromS: 0.04, toS: 1 },
];

/** IEC 60127-2 sheet 2. */
const quickLimits = (rating: number): readonly OpeningLimits[] => [
  { times: 1.5, fromS: rating > 6.3 ? 1800 : 3600, toS: never },
  { times: 2.1, fromS: 0.05, toS: 1800 },
  { times: 2.75, fromS: 0.05, toS: 2 },
  { times: 4, fromS: 0.01, toS: rating > 6.3 ? 0.4 : 0.3 },
  { times: 10, fromS: 0, toS: rating > 6.3 ? 0.04 : 0.02 },
];

/** IEC 60127-2 sheet 5. */
const slowLimits = (rating: number): readonly OpeningLimits[] => [
  { times: 1.5, fromS: 3600, toS: never },
  { times: 2.1, fromS: 1, toS: 1800 },
  { times: 2.75, fromS: 1, toS: 80 },
  { times: 4, fromS: rating > 3.15 ? 0.15 : 0.095, toS: 5 },
  { times: 10, fromS: rating > 3.15 ? 0.02 : 0.01, toS: 0.1 },
];
