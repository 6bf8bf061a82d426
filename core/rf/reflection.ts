import { add, type Complex, complex, divide, magnitude, subtract } from '../quantity/complex.ts';

/** A line's end with nothing on it: endless ohms. */
export const openEnd: Complex = { re: Number.POSITIVE_INFINITY, im: 0 };

/** A line's end with its conductors joined. */
export const shortEnd: Complex = { re: 0, im: 0 };

/** Whether an impedance is endless, in either part. */
export const isOpenEnd = (ohms: Complex): boolean =>
  Math.abs(ohms.re) === Number.POSITIVE_INFINITY || Math.abs(ohms.im) === Number.POSITIVE_INFINITY;

/**
 * Reflection coefficient of a load in ohms on a line of `z0` ohms, for voltage: (ZL - Z0) / (ZL + Z0). 1 for an open
 * end, -1 for a short. Into a passive load its size is at most 1 where Z0 is real; where Z0 is complex it can be more.
 *
 *     reflectionCoefficient({ re: 200, im: 0 }, 50) // { re: 0.6, im: 0 }
 */
export function reflectionCoefficient(load: Complex, z0: number | Complex): Complex {
  if (isOpenEnd(load)) return { re: 1, im: 0 };
  return divide(subtract(load, complex(z0)), add(load, complex(z0)));
}

/** SWR of a reflection coefficient's size rho: (1 + rho) / (1 - rho); endless from 1 on. */
export const swrOfReflection = (rho: number): number => (rho < 1 ? (1 + rho) / (1 - rho) : Number.POSITIVE_INFINITY);

/** Size of the reflection coefficient at an SWR of 1 or more: (S - 1) / (S + 1); 1 for an endless SWR. */
export const reflectionOfSwr = (swr: number): number => (swr === Number.POSITIVE_INFINITY ? 1 : (swr - 1) / (swr + 1));

/** SWR of a load in ohms on a line of `z0` ohms; endless for an open end, a short and a pure reactance. */
export const swrOfLoad = (load: Complex, z0: number | Complex): number =>
  swrOfReflection(magnitude(reflectionCoefficient(load, z0)));

/**
 * SWR from the two powers that a directional meter shows, in the same unit: rho is the root of reflected over forward.
 *
 *     swrOfPowers(800, 150) // 2.53
 */
export const swrOfPowers = (forwardWatts: number, reflectedWatts: number): number =>
  swrOfReflection(Math.sqrt(reflectedWatts / forwardWatts));

/** Return loss in dB: -20 log rho; endless where nothing comes back. */
export const returnLossDb = (rho: number): number => -20 * Math.log10(rho);

/** Size of the reflection coefficient of a return loss in dB. */
export const reflectionOfReturnLoss = (db: number): number => 10 ** (-db / 20);

/** Mismatch loss in dB, by which less than the forward power goes into the load: -10 log(1 - rho²). */
export const mismatchLossDb = (rho: number): number => -10 * Math.log10(1 - rho * rho);
