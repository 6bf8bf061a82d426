/** A complex number in rectangular form; never changed once made. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

/** A real number as a complex one; a complex one as it is. */
export const complex = (value: number | Complex): Complex => (typeof value === 'number' ? { re: value, im: 0 } : value);

export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });

export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });

export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

/** The quotient; by zero it is not a number, as 0/0 is. */
export function divide(a: Complex, b: Complex): Complex {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
}

/** Distance from zero. */
export const magnitude = (z: Complex): number => Math.hypot(z.re, z.im);

export const exp = (z: Complex): Complex => ({
  re: Math.exp(z.re) * Math.cos(z.im),
  im: Math.exp(z.re) * Math.sin(z.im),
});

/**
 * Hyperbolic tangent: (t cos b + j sin b) / (cos b + j t sin b) with t = tanh a, for z = a + jb. Written so, nothing
 * overflows however large a is (Abramowitz and Stegun, 4.5.51, divided by cosh a).
 *
 *     tanh({ re: 0, im: Math.PI / 4 }) // j tan 45° = { re: 0, im: 1 }
 */
export function tanh(z: Complex): Complex {
  const t = Math.tanh(z.re);
  const cos = Math.cos(z.im);
  const sin = Math.sin(z.im);
  return divide({ re: t * cos, im: sin }, { re: cos, im: t * sin });
}
