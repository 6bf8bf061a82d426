import { add, type Complex, complex, divide, exp, magnitude, multiply, tanh } from '../quantity/complex.ts';
import { isOpenEnd, openEnd, reflectionCoefficient, swrOfReflection } from './reflection.ts';

/** A length of line at one frequency with what hangs on its far end. */
export interface Line {
  /** Ohms. A complex one has to belong to the loss, as `lossyZ0` has it: any other makes the line a source of power. */
  readonly z0: number | Complex;
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
 * The complex Z0 in ohms of a line whose conductors make all of its loss, as in cables on HF: Z0 (1 - jα/β), from the
 * nominal Z0 and Z0 = γ / jωC. Not for 0 Hz.
 */
export function lossyZ0(line: Omit<Line, 'z0' | 'load'> & { readonly z0: number }): Complex {
  const { re, im } = propagation({ ...line, load: openEnd }, 1);
  return { re: line.z0, im: (-line.z0 * re) / im };
}

/**
 * Impedance in ohms that the near end shows: Z0 (ZL + Z0 tanh γl) / (Z0 + ZL tanh γl), for a lossy line and a complex
 * Z0 too, in travelling waves (ARRL Antenna Book, 20th edition, page 24-12). A line of no length shows its load;
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

/** Reflection coefficient, in the line's own Z0, at a place that many metres before the load: ΓL e^(-2γd). */
export function reflectionAlong(line: Line, fromLoadM: number): Complex {
  const { re, im } = propagation(line, fromLoadM);
  return multiply(reflectionCoefficient(line.load, line.z0), exp({ re: -2 * re, im: -2 * im }));
}

/** SWR at a place that many metres before the load: the line's loss makes it fall towards the source. */
export const swrAlong = (line: Line, fromLoadM: number): number =>
  swrOfReflection(
    magnitude(reflectionCoefficient(line.load, line.z0)) * Math.exp(-2 * propagation(line, fromLoadM).re),
  );
