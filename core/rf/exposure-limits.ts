/** Who is there: people who know of it and can leave (occupational, controlled), or anyone (general, uncontrolled). */
export type ExposureTier = 'controlled' | 'uncontrolled';

export interface ExposureLimit {
  readonly mwPerCm2: number;
  /** Minutes over which the power is averaged. */
  readonly averagingMin: number;
}

/** Up to so many MHz, a law of the frequency in MHz. */
type Step = readonly [toMhz: number, law: (mhz: number) => number];

const lowestMhz = 0.3;

const limits: Readonly<Record<ExposureTier, { readonly averagingMin: number; readonly steps: readonly Step[] }>> = {
  controlled: {
    averagingMin: 6,
    steps: [
      [3, () => 100],
      [30, (mhz) => 900 / mhz ** 2],
      [300, () => 1],
      [1500, (mhz) => mhz / 300],
      [100_000, () => 5],
    ],
  },
  uncontrolled: {
    averagingMin: 30,
    steps: [
      [1.34, () => 100],
      [30, (mhz) => 180 / mhz ** 2],
      [300, () => 0.2],
      [1500, (mhz) => mhz / 1500],
      [100_000, () => 1],
    ],
  },
};

/**
 * Greatest power density in mW/cm² of 47 CFR 1.1310(e), table 1 (below 30 MHz that of a plane wave), and its averaging
 * time. A caution that defers to the local rules. Null below 0.3 MHz and above 100 GHz.
 *
 *     exposureLimit(14e6, 'uncontrolled') // { mwPerCm2: 0.918, averagingMin: 30 }
 */
export function exposureLimit(hertz: number, tier: ExposureTier): ExposureLimit | null {
  const { averagingMin, steps } = limits[tier];
  const law = lawAt(hertz / 1e6, steps);
  return law && { mwPerCm2: law(hertz / 1e6), averagingMin };
}

/** Metres within which 47 CFR 1.1307(b)(3)(i)(C) exempts nobody: a wavelength over 2π. */
export const nearFieldM = (hertz: number): number => 299_792_458 / (2 * Math.PI * hertz);

/** A step that begins where another ends holds from there on, so each ends just before its upper frequency; the last includes it. */
function lawAt(mhz: number, steps: readonly Step[]): Step[1] | null {
  if (mhz < lowestMhz) return null;
  const last = steps.at(-1);
  return (steps.find(([to]) => mhz < to) ?? (last && mhz === last[0] ? last : undefined))?.[1] ?? null;
}
