/** The worst place of a line: net power there, SWR, and the line's real Z0 in ohms. */
export interface LineStress {
  readonly netWatts: number;
  readonly swr: number;
  readonly z0: number;
}

/**
 * Peak volts at a voltage maximum: √(2 P Z0 S), from P = V²/2R with R = Z0 S there. Exact where the line loses little
 * between two maxima; with loss take power and SWR of the end that has more.
 *
 *     peakVolts({ netWatts: 1500, swr: 3, z0: 50 }) // 670.8
 */
export const peakVolts = ({ netWatts, swr, z0 }: LineStress): number => Math.sqrt(2 * netWatts * z0 * swr);

/** Peak volts at a voltage minimum: √(2 P Z0 / S). */
export const leastPeakVolts = ({ netWatts, swr, z0 }: LineStress): number => Math.sqrt((2 * netWatts * z0) / swr);

/** Peak amperes at a current maximum: √(2 P S / Z0). */
export const peakAmps = ({ netWatts, swr, z0 }: LineStress): number => Math.sqrt((2 * netWatts * swr) / z0);

/** Net watts at which a voltage maximum just reaches so many peak volts: V² / (2 Z0 S). */
export const wattsAtPeakVolts = (volts: number, swr: number, z0: number): number => volts ** 2 / (2 * z0 * swr);
