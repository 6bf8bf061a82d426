import { add, type Complex, complex, divide, subtract } from '../quantity/complex.ts';

/** A line's end with nothing on it: endless ohms. */
export const openEnd: Complex = { re: Number.POSITIVE_INFINITY, im: 0 };

/** Whether an impedance is endless, in either part. */
export const isOpenEnd = (ohms: Complex): boolean =>
  Math.abs(ohms.re) === Number.POSITIVE_INFINITY || Math.abs(ohms.im) === Number.POSITIVE_INFINITY;

/**
 * Reflection coefficient of a load in ohms on a line of `z0` ohms, for voltage: (ZL - Z0) / (ZL + Z0). 1 for an open
 * end, -1 for a short. Into a passive load its size is at most 1.
 *
 *     reflectionCoefficient({ re: 200, im: 0 }, 50) // { re: 0.6, im: 0 }
 */
export function reflectionCoefficient(load: Complex, z0: number): Complex {
  if (isOpenEnd(load)) return { re: 1, im: 0 };
  return divide(subtract(load, complex(z0)), add(load, complex(z0)));
}

/** SWR of a reflection coefficient's size rho: (1 + rho) / (1 - rho); endless from 1 on. */
export const swrOfReflection = (rho: number): number => (rho < 1 ? (1 + rho) / (1 - rho) : Number.POSITIVE_INFINITY);
