import { complex, magnitude } from '../quantity/complex.ts';
import { type Line, matchedLossDb, propagation, reflectionAlong } from './line.ts';
import { isOpenEnd, reflectionCoefficient, reflectionOfSwr, swrOfReflection } from './reflection.ts';

/**
 * Loss in dB from the net power into the line to the net power into its load, by the exact power Re(V I*) at both ends,
 * so for a complex Z0 too (QST, November 1997, pages 70-71). Into a load that takes no power it is endless; 0 for a line
 * without length or loss. With a complex Z0 a short line can lose less than when it is matched.
 *
 *     totalLossDb({ z0: 50, velocityFactor: 0.66, lossDbPer100m: 5, lengthM: 30, hertz: 14e6, load: { re: 25, im: 25 } })
 *     // 2.0104
 */
export function totalLossDb(line: Line): number {
  const { re: r0, im: x0 } = complex(line.z0);
  const matchedDb = matchedLossDb(line);
  if (matchedDb === 0 && (x0 === 0 || line.lengthM === 0)) return 0;
  // Power at a place is as the square of the wave times r0 (1 - |Γ|²) - 2 x0 Im Γ. At the load that is 4 |Z0|² RL /
  // |ZL + Z0|², which keeps its digits where 1 - |Γ|² would lose them.
  const atLoad = takenByLoad(line);
  if (!(atLoad > 0)) return Number.POSITIVE_INFINITY;
  const nepers = propagation(line).re;
  const square = (atLoad + 2 * x0 * reflectionCoefficient(line.load, line.z0).im) / r0;
  const squareAtInput = square * Math.exp(-4 * nepers) - Math.expm1(-4 * nepers);
  const atInput = r0 * squareAtInput - 2 * x0 * reflectionAlong(line, line.lengthM).im;
  return matchedDb + 10 * Math.log10(atInput / atLoad);
}

function takenByLoad({ load, z0 }: Line): number {
  if (isOpenEnd(load)) return 0;
  const { re, im } = complex(z0);
  return (4 * (re * re + im * im) * load.re) / magnitude({ re: load.re + re, im: load.im + im }) ** 2;
}

/**
 * Loss in dB of a line of real Z0 with a matched loss in dB and an SWR at its load: with a = 10^(A/10) and rho of the
 * load, 10 log((a² - rho²) / (a (1 - rho²))) (ARRL Handbook). Endless for an endless SWR, unless the line has no loss.
 *
 *     lossAtSwr(1, 3) // 1.50
 */
export function lossAtSwr(matchedDb: number, loadSwr: number): number {
  if (matchedDb === 0) return 0;
  const a = 10 ** (matchedDb / 10);
  const square = reflectionOfSwr(loadSwr) ** 2;
  return 10 * Math.log10((a * a - square) / (a * (1 - square)));
}

/** What the SWR at the load adds to the matched loss, both in dB, for a line of real Z0: `addedLossDb(1, 3)` is 0.50. */
export const addedLossDb = (matchedDb: number, loadSwr: number): number => lossAtSwr(matchedDb, loadSwr) - matchedDb;

/** SWR at the near end of a line with a matched loss in dB and an SWR at its load: `swrAtInput(1, 3)` is 2.32. */
export const swrAtInput = (matchedDb: number, loadSwr: number): number =>
  swrOfReflection(reflectionOfSwr(loadSwr) * 10 ** (-matchedDb / 10));
