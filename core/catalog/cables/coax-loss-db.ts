import type { Coax } from '../../station/schema/cable-kind.ts';

/**
 * Attenuation of a matched length of coax in decibels. Between two printed points a straight line of log dB against
 * log frequency, which meets the points exactly; below the first it falls with the square root of frequency, beyond
 * the last it goes on as between the last two. 0 at 0 Hz.
 *
 *     coaxLossDb(coaxTypes['rg-58'], 30, 14e6) // 1.78
 */
export function coaxLossDb(coax: Pick<Coax, 'points'>, lengthM: number, hertz: number): number {
  return (lossPer100M(coax.points, hertz / 1e6) * lengthM) / 100;
}

function lossPer100M(points: Coax['points'], mhz: number): number {
  const [first] = points;
  if (!first || mhz <= 0) return 0;
  if (mhz <= first[0] || points.length === 1) return first[1] * Math.sqrt(mhz / first[0]);
  const found = points.findIndex(([at]) => at >= mhz);
  const upper = found === -1 ? points.length - 1 : found;
  const low = points[upper - 1] ?? first;
  const high = points[upper] ?? first;
  const along = Math.log(mhz / low[0]) / Math.log(high[0] / low[0]);
  return low[1] * (high[1] / low[1]) ** along;
}
