import { type Complex, magnitude } from '../quantity/complex.ts';
import { isOpenEnd, swrOfLoad } from './reflection.ts';

/** `matches` with any layout, `doubtful` if only some layouts of the network can, `outside` for all of them. */
export type MatchVerdict = 'matches' | 'doubtful' | 'outside';

export interface MatchRange {
  readonly minOhms: number;
  readonly maxOhms: number;
}

/**
 * Whether a tuner with a range of resistances matches a load in ohms. A network takes a reactance away either in series,
 * which leaves the load's R, or in parallel, which leaves |Z|²/R, and R is never the larger. With both inside the range
 * it matches; with R above it or |Z|²/R below it neither way helps. A load without resistance is outside. The reactance
 * that its parts can supply is not in a tuner's figures and so is not judged (common practice).
 *
 *     matchOf({ re: 100, im: 0 }, { minOhms: 10, maxOhms: 500 }) // 'matches'
 */
export function matchOf(load: Complex, { minOhms, maxOhms }: MatchRange): MatchVerdict {
  if (isOpenEnd(load) || !(load.re > 0)) return 'outside';
  const series = load.re;
  const parallel = magnitude(load) ** 2 / load.re;
  if (series > maxOhms || parallel < minOhms) return 'outside';
  return series >= minOhms && parallel <= maxOhms ? 'matches' : 'doubtful';
}

/** Whether a tuner that is sold for an SWR, `maxSwr` in `z0` ohms, matches a load: any phase of that SWR is in its reach. */
export const matchOfSwr = (load: Complex, maxSwr: number, z0: number): MatchVerdict =>
  swrOfLoad(load, z0) <= maxSwr * (1 + 1e-12) ? 'matches' : 'outside';

/** The range of resistances in ohms that an SWR in `z0` ohms spans: Z0/S to Z0 S. */
export const rangeOfSwr = (maxSwr: number, z0: number): MatchRange => ({ minOhms: z0 / maxSwr, maxOhms: z0 * maxSwr });

/**
 * Loss in dB of a two-part network between two resistances, of which only the coil has loss: the network works at
 * Q = √(high/low - 1) and wastes the share Q/Qu of the power. 0 between equal resistances, endless from Q = Qu on.
 *
 *     matchLossDb(50, 200, 100) // 0.0759
 */
export function matchLossDb(ohms: number, otherOhms: number, coilQ: number): number {
  const q = Math.sqrt(Math.max(ohms, otherOhms) / Math.min(ohms, otherOhms) - 1);
  return q < coilQ ? -10 * Math.log10(1 - q / coilQ) : Number.POSITIVE_INFINITY;
}
