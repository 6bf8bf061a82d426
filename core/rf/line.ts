import { add, type Complex, complex, divide, magnitude, multiply, tanh } from '../quantity/complex.ts';
import { isOpenEnd, openEnd } from './reflection.ts';

/** A length of line at one frequency with what hangs on its far end. */
export interface Line {
  /** Ohms. */
  readonly z0: number;
  readonly velocityFactor: number;
  /** Matched attenuation at this frequency. */
  readonly lossDbPer100m: number;
  readonly lengthM: number;
  readonly hertz: number;
  /** Ohms at the far end, of a passive load; `openEnd` for nothing. */
  readonly load: Complex;
}

const lightMPerS = 299_792_458;
/** Decibels in a neper. */
const dbPerNeper = 20 / Math.LN10;

/** Attenuation of the matched line in dB. */
export const matchedLossDb = (line: Pick<Line, 'lossDbPer100m' | 'lengthM'>): number =>
  (line.lossDbPer100m * line.lengthM) / 100;

/** Electrical length in degrees: 360 per wavelength in the line. */
export const lengthDegrees = (line: Pick<Line, 'velocityFactor' | 'lengthM' | 'hertz'>): number =>
  (360 * line.hertz * line.lengthM) / (line.velocityFactor * lightMPerS);

/** Attenuation in nepers and phase in radians from the load to a place that many metres before it. */
export const propagation = (line: Line, fromLoadM: number = line.lengthM): Complex => ({
  re: matchedLossDb({ ...line, lengthM: fromLoadM }) / dbPerNeper,
  im: (lengthDegrees({ ...line, lengthM: fromLoadM }) * Math.PI) / 180,
});

/**
 * Impedance in ohms that the near end shows: Z0 (ZL + Z0 tanh γl) / (Z0 + ZL tanh γl), for a lossy line
 * too, in travelling waves (ARRL Antenna Book, 20th edition, page 24-12). A line of no length shows its load;
 * `openEnd` comes back where nothing could flow.
 *
 *     // a quarter wave of 50 Ω line turns 25 Ω into 100 Ω
 *     inputImpedance({ z0: 50, velocityFactor: 1, lossDbPer100m: 0, lengthM: 2.5, hertz: 29.9792458e6, load: { re: 25, im: 0 } })
 */
export function inputImpedance(line: Line): Complex {
  const z0 = complex(line.z0);
  const t = tanh(propagation(line));
  // A line that does nothing hands its load on as it is, to the last digit.
  if (magnitude(t) === 0) return line.load;
  if (isOpenEnd(line.load)) return divide(z0, t);
  const below = add(z0, multiply(line.load, t));
  return magnitude(below) === 0 ? openEnd : multiply(z0, divide(add(line.load, multiply(z0, t)), below));
}
