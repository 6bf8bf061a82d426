import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  type Complex,
  complex,
  divide,
  magnitude,
  multiply,
  subtract,
  tanh,
} from '../../core/quantity/complex.ts';
import { inputImpedance, type Line, lengthDegrees, matchedLossDb, propagation } from '../../core/rf/line.ts';
import { openEnd, reflectionCoefficient, swrOfReflection } from '../../core/rf/reflection.ts';
import { passiveLoad, randomLine } from './random-line.ts';
import { swrOfLoad, walkLine } from './walk.ts';

/** A line's end with its conductors joined. */
const shortEnd: Complex = { re: 0, im: 0 };

const share = fc.double({ min: 0, max: 1, noNaN: true });
const lossless = randomLine.map((line): Line => ({ ...line, lossDbPer100m: 0 }));

const off = (found: Complex, wanted: Complex): number => magnitude(subtract(found, wanted)) / magnitude(wanted);
/** SWR at a place that many metres before the load, by the wave: the loss makes it fall towards the source. */
const swrByWave = (line: Line, fromLoadM: number): number =>
  swrOfReflection(
    magnitude(reflectionCoefficient(line.load, line.z0)) * Math.exp(-2 * propagation(line, fromLoadM).re),
  );
const swrShown = (line: Line, lengthM: number): number => swrOfLoad(inputImpedance({ ...line, lengthM }), line.z0);

/**
 * Loss in dB of a line of real Z0 with a matched loss in dB and an SWR at its load: with a = 10^(A/10) and rho of the
 * load, 10 log((a² - rho²) / (a (1 - rho²))) (ARRL Handbook).
 */
function lossAtSwr(matchedDb: number, swr: number): number {
  const a = 10 ** (matchedDb / 10);
  const square = ((swr - 1) / (swr + 1)) ** 2;
  return 10 * Math.log10((a * a - square) / (a * (1 - square)));
}

const metresPerDegree = (line: Line): number => 1 / lengthDegrees({ ...line, lengthM: 1 });

describe('laws of a line', () => {
  it('nothing more than all comes back from a passive load', () => {
    fc.assert(
      fc.property(passiveLoad, fc.constantFrom(50, 75, 450), (load, z0) => {
        expect(magnitude(reflectionCoefficient(load, z0))).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  it('SWR never rises towards the source', () => {
    fc.assert(
      fc.property(randomLine, share, share, (line, a, b) => {
        const [near, far] = [Math.max(a, b), Math.min(a, b)];
        expect(swrShown(line, near * line.lengthM)).toBeLessThanOrEqual(
          swrShown(line, far * line.lengthM) * (1 + 1e-6),
        );
      }),
    );
  });

  it('the input shows the SWR that the wave has there', () => {
    fc.assert(
      fc.property(randomLine, (line) => {
        expect(swrOfLoad(walkLine(line).inputOhms, line.z0) / swrByWave(line, line.lengthM)).toBeCloseTo(1, 6);
      }),
    );
  });

  it('with a real Z0 no load makes the line lose less than a matched one', () => {
    fc.assert(
      fc.property(randomLine, (line) => {
        expect(walkLine(line).totalLossDb).toBeGreaterThanOrEqual(matchedLossDb(line) * (1 - 1e-6));
      }),
    );
  });

  it('loss by power at both ends is loss by SWR and matched loss', () => {
    fc.assert(
      fc.property(randomLine, (line) => {
        const bySwr = lossAtSwr(matchedLossDb(line), swrOfLoad(line.load, line.z0));
        expect(walkLine(line).totalLossDb / bySwr).toBeCloseTo(1, 6);
      }),
    );
  });

  it('a lossless line loses nothing, and shows the same again half a wave on', () => {
    fc.assert(
      fc.property(lossless, fc.integer({ min: 1, max: 5 }), (line, halves) => {
        const longer = { ...line, lengthM: line.lengthM + 180 * halves * metresPerDegree(line) };
        expect(walkLine(line).totalLossDb).toBeCloseTo(0, 6);
        expect(off(inputImpedance(longer), inputImpedance(line))).toBeLessThan(1e-6);
      }),
    );
  });

  it('a quarter wave of lossless line turns a load over: Zin ZL = Z0²', () => {
    fc.assert(
      fc.property(lossless, (line) => {
        const quarter = { ...line, lengthM: 90 * metresPerDegree(line) };
        const z0 = complex(line.z0);
        expect(off(multiply(inputImpedance(quarter), line.load), multiply(z0, z0))).toBeLessThan(1e-9);
      }),
    );
  });

  it('two lengths one behind the other are one of both', () => {
    fc.assert(
      fc.property(randomLine, share, (line, at) => {
        const far = { ...line, lengthM: line.lengthM * at };
        const near = { ...line, lengthM: line.lengthM * (1 - at), load: inputImpedance(far) };
        expect(off(inputImpedance(near), inputImpedance(line))).toBeLessThan(1e-6);
        expect(walkLine(near).totalLossDb + walkLine(far).totalLossDb).toBeCloseTo(walkLine(line).totalLossDb, 6);
      }),
    );
  });

  it('carries as much one way as the other: generator and load changed over', () => {
    /** Watts into the load from 1 V behind the generator's own impedance. */
    const carried = (line: Line, generator: Complex): number => {
      const input = inputImpedance(line);
      const amps = magnitude(divide(complex(1), add(generator, input)));
      return amps ** 2 * input.re * 10 ** (-walkLine(line).totalLossDb / 10);
    };
    fc.assert(
      fc.property(randomLine, passiveLoad, (line, other) => {
        const there = carried(line, other) * other.re;
        const back = carried({ ...line, load: other }, line.load) * line.load.re;
        expect(there / back).toBeCloseTo(1, 6);
      }),
    );
  });

  it('no place of a lossless line has more volts than the worst that is told, and one has as many', () => {
    fc.assert(
      fc.property(lossless, (line) => {
        const wave = 360 * metresPerDegree(line);
        const { peakVolts, netWatts } = walkLine({ ...line, lengthM: wave });
        let most = 0;
        for (let i = 0; i < 720; i++) {
          const { re, im } = inputImpedance({ ...line, lengthM: (i / 720) * wave });
          most = Math.max(most, Math.sqrt((2 * netWatts) / re) * Math.hypot(re, im));
        }
        expect(most).toBeLessThanOrEqual(peakVolts * (1 + 1e-6));
        expect(most).toBeGreaterThan(peakVolts * 0.99);
      }),
      { numRuns: 30 },
    );
  });
});

describe('at the edges', () => {
  const line: Line = {
    z0: 50,
    velocityFactor: 0.66,
    lossDbPer100m: 5,
    lengthM: 10,
    hertz: 14e6,
    load: { re: 25, im: 25 },
  };
  const freeWave = { ...line, velocityFactor: 1, lossDbPer100m: 0, hertz: 29.9792458e6 };

  it('no length: the load itself, and no loss', () => {
    for (const load of [line.load, openEnd, shortEnd])
      expect(inputImpedance({ ...line, lengthM: 0, load })).toEqual(load);
    expect(walkLine({ ...line, lengthM: 0 }).totalLossDb).toBeCloseTo(0, 9);
  });
  it('an eighth of a wave, lossless: open -j50 Ω, shorted +j50 Ω (Z0 / j tan 45°, j Z0 tan 45°)', () => {
    const eighth = { ...freeWave, lengthM: 1.25 };
    expect(off(inputImpedance({ ...eighth, load: openEnd }), { re: 0, im: -50 })).toBeLessThan(1e-12);
    expect(off(inputImpedance({ ...eighth, load: shortEnd }), { re: 0, im: 50 })).toBeLessThan(1e-12);
  });
  it('a quarter wave turns 25 Ω into 100 Ω', () => {
    expect(off(inputImpedance({ ...freeWave, lengthM: 2.5, load: { re: 25, im: 0 } }), complex(100))).toBeLessThan(
      1e-12,
    );
  });
  it('an open and a shorted end: all comes back but what the line takes on both ways', () => {
    for (const load of [openEnd, shortEnd, { re: 0, im: 70 }]) {
      expect(swrOfLoad(load, 50)).toBeGreaterThan(1e12);
      // 0.5 dB each way leave 10^-0.1 in power, 10^-0.05 in the wave: SWR 17.4.
      expect(swrShown({ ...line, load }, 10)).toBeCloseTo((1 + 10 ** -0.05) / (1 - 10 ** -0.05), 6);
      expect(inputImpedance({ ...line, load }).re).toBeGreaterThan(0);
    }
  });
  it('a very long line shows its Z0 and takes everything, without an overflow', () => {
    const endless = { ...line, lengthM: 200_000 };
    expect(off(inputImpedance(endless), complex(50))).toBeLessThan(1e-12);
    expect(walkLine(endless).totalLossDb).toBeGreaterThanOrEqual(10_000);
    expect(walkLine(endless).totalLossDb).toBeLessThan(10_002);
  });
});

describe('tanh', () => {
  it.each([
    { z: { re: 0, im: Math.PI / 4 }, expect: { re: 0, im: 1 } },
    { z: { re: Math.log(2), im: 0 }, expect: { re: 0.6, im: 0 } },
    // tanh(z + jπ/2) = coth z.
    { z: { re: Math.log(2), im: Math.PI / 2 }, expect: { re: 1 / 0.6, im: 0 } },
    { z: { re: 1e4, im: 3 }, expect: { re: 1, im: 0 } },
  ])('of $z.re + j$z.im', ({ z, expect: wanted }) => {
    expect(off(tanh(z), wanted)).toBeLessThan(1e-12);
  });
});
