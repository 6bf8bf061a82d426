import { type Complex, magnitude } from '../quantity/complex.ts';
import { isOpenEnd } from './reflection.ts';

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
