import fc from 'fast-check';
import type { Line } from '../../core/rf/line.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A passive load in ohms that takes power, from nearly a short to nearly open. */
export const passiveLoad = fc.record({
  re: between(0, 4).map((decades) => 10 ** decades),
  im: between(-3000, 3000),
});

/** Lines of real Z0 as they occur: HF and VHF, up to 60 m, thin to thick. */
export const randomLine: fc.Arbitrary<Line> = fc.record({
  z0: fc.constantFrom(50, 75, 93, 300, 450),
  velocityFactor: between(0.6, 1),
  lossDbPer100m: between(0.1, 30),
  lengthM: between(0.1, 60),
  hertz: between(1.8e6, 150e6),
  load: passiveLoad,
});
