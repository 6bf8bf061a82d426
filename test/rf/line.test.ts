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
import { inputImpedance, type Line, lengthDegrees, lossyZ0, matchedLossDb, swrAlong } from '../../core/rf/line.ts';
import { lossAtSwr, totalLossDb } from '../../core/rf/line-loss.ts';
import { leastPeakVolts, peakAmps, peakVolts } from '../../core/rf/line-stress.ts';
import { lineWithLosses } from '../../core/rf/line-with-losses.ts';
import { openEnd, reflectionCoefficient, shortEnd, swrOfLoad } from '../../core/rf/reflection.ts';
import { passiveLoad, randomLine } from './random-line.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
/** A Z0 turned by the line's loss: what a thin cable has on the lowest bands. */
const turned = randomLine.map((line): Line => ({ ...line, z0: lossyZ0({ ...line, z0: complex(line.z0).re }) }));
const lossless = randomLine.map((line): Line => ({ ...line, lossDbPer100m: 0 }));

const off = (found: Complex, wanted: Complex): number => magnitude(subtract(found, wanted)) / magnitude(wanted);
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
        expect(swrAlong(line, near * line.lengthM)).toBeLessThanOrEqual(
          swrAlong(line, far * line.lengthM) * (1 + 1e-12),
        );
      }),
    );
  });

  it('the input shows the SWR that the wave has there', () => {
    fc.assert(
      fc.property(randomLine, (line) => {
        expect(swrOfLoad(inputImpedance(line), line.z0) / lineWithLosses(line).inputSwr).toBeCloseTo(1, 6);
      }),
    );
  });

  it('with a real Z0 no load makes the line lose less than a matched one', () => {
    fc.assert(
      fc.property(randomLine, (line) => {
        expect(totalLossDb(line)).toBeGreaterThanOrEqual(matchedLossDb(line) * (1 - 1e-9));
      }),
    );
  });

  it('loss by power at both ends is loss by SWR and matched loss', () => {
    fc.assert(
      fc.property(randomLine, (line) => {
        const bySwr = lossAtSwr(matchedLossDb(line), swrOfLoad(line.load, line.z0));
        expect(totalLossDb(line) / bySwr).toBeCloseTo(1, 6);
      }),
    );
  });

  it('a lossless line loses nothing, and shows the same again half a wave on', () => {
    fc.assert(
      fc.property(lossless, fc.integer({ min: 1, max: 5 }), (line, halves) => {
        const longer = { ...line, lengthM: line.lengthM + 180 * halves * metresPerDegree(line) };
        expect(totalLossDb(line)).toBe(0);
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
      fc.property(turned, share, (line, at) => {
        const far = { ...line, lengthM: line.lengthM * at };
        const near = { ...line, lengthM: line.lengthM * (1 - at), load: inputImpedance(far) };
        expect(off(inputImpedance(near), inputImpedance(line))).toBeLessThan(1e-6);
        expect(totalLossDb(near) + totalLossDb(far)).toBeCloseTo(totalLossDb(line), 6);
      }),
    );
  });

  it('carries as much one way as the other: generator and load changed over', () => {
    /** Watts into the load from 1 V behind the generator's own impedance. */
    const carried = (line: Line, generator: Complex): number => {
      const input = inputImpedance(line);
      const amps = magnitude(divide(complex(1), add(generator, input)));
      return amps ** 2 * input.re * 10 ** (-totalLossDb(line) / 10);
    };
    fc.assert(
      fc.property(turned, passiveLoad, (line, other) => {
        const there = carried(line, other) * other.re;
        const back = carried({ ...line, load: other }, line.load) * line.load.re;
        expect(there / back).toBeCloseTo(1, 6);
      }),
    );
  });

  it('no place of a lossless line has more volts or amperes than the worst, nor fewer volts than the least', () => {
    fc.assert(
      fc.property(lossless, (line) => {
        const z0 = complex(line.z0).re;
        const stress = { netWatts: 100, swr: swrOfLoad(line.load, z0), z0 };
        const wave = 360 * metresPerDegree(line);
        let [most, least, mostAmps] = [0, Number.POSITIVE_INFINITY, 0];
        for (let i = 0; i < 720; i++) {
          const { re, im } = inputImpedance({ ...line, lengthM: (i / 720) * wave });
          const amps = Math.sqrt((2 * stress.netWatts) / re);
          const volts = amps * Math.hypot(re, im);
          most = Math.max(most, volts);
          least = Math.min(least, volts);
          mostAmps = Math.max(mostAmps, amps);
        }
        expect(most).toBeLessThanOrEqual(peakVolts(stress) * (1 + 1e-6));
        expect(most).toBeGreaterThan(peakVolts(stress) * 0.99);
        expect(least).toBeGreaterThanOrEqual(leastPeakVolts(stress) * (1 - 1e-6));
        expect(mostAmps).toBeLessThanOrEqual(peakAmps(stress) * (1 + 1e-6));
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
    for (const load of [line.load, openEnd, shortEnd]) {
      const none = { ...line, lengthM: 0, load };
      expect(inputImpedance(none)).toEqual(load);
      expect(totalLossDb(none)).toBe(0);
    }
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
  it('an open and a shorted end: all comes back, nothing arrives', () => {
    for (const load of [openEnd, shortEnd, { re: 0, im: 70 }]) {
      const result = lineWithLosses({ ...line, load });
      expect(result.loadSwr).toBeGreaterThan(1e12);
      expect(result.totalLossDb).toBe(Number.POSITIVE_INFINITY);
      // 0.5 dB each way leave 10^-0.1 in power, 10^-0.05 in the wave: SWR 17.4.
      expect(result.inputSwr).toBeCloseTo((1 + 10 ** -0.05) / (1 - 10 ** -0.05), 6);
      expect(result.inputOhms.re).toBeGreaterThan(0);
    }
  });
  it('a very long line shows its Z0 and takes everything, without an overflow', () => {
    const endless = { ...line, lengthM: 200_000 };
    expect(off(inputImpedance(endless), complex(50))).toBeLessThan(1e-12);
    expect(totalLossDb(endless)).toBeGreaterThan(10_000);
    expect(totalLossDb(endless)).toBeLessThan(10_002);
  });
  it('a short line of complex Z0 before a high resistance loses less than when it is matched', () => {
    // 0.3 Ω/m, 250 nH/m, 100 pF/m at 3.5 MHz: 50 Ω, 2.605 dB per 100 m, velocity factor 0.6669. A metre of it before
    // 500 Ω, worked by hand: the current per volt is 2 mS and what flows into the capacitance behind each place, 2.2 mS
    // a metre; its square over the metre is 4.0 + 1.61 = 5.61 µS², times 0.3 Ω is 1.68 µW beside 2 mW: 0.00366 dB.
    const cable = { velocityFactor: 0.6669, lossDbPer100m: 2.605, lengthM: 1, hertz: 3.5e6 };
    const short = { ...cable, z0: lossyZ0({ ...cable, z0: 50 }), load: complex(500) };
    expect(totalLossDb(short)).toBeLessThan(matchedLossDb(short) / 7);
    expect(totalLossDb(short)).toBeGreaterThan(0.0036);
    expect(totalLossDb(short)).toBeLessThan(0.0037);
  });
  it('the Z0 of 0.3 Ω/m, 250 nH/m, 100 pF/m at 3.5 MHz is 50.02 - j1.364 Ω (calculation: √((R + jωL) / jωC))', () => {
    const z0 = lossyZ0({ z0: 50.02, velocityFactor: 0.6669, lossDbPer100m: 2.6048, lengthM: 1, hertz: 3.5e6 });
    expect(z0.im).toBeCloseTo(-1.364, 3);
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
