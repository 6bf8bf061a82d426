import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputImpedance } from '../../core/rf/line.ts';
import { matchLossDb, matchOf, matchOfSwr, rangeOfSwr } from '../../core/rf/match.ts';
import { openEnd, shortEnd, swrOfLoad } from '../../core/rf/reflection.ts';
import { passiveLoad, randomLine } from './random-line.ts';

describe('what a tuner of 10 to 500 Ω matches', () => {
  it.each([
    { name: 'a resistance inside', load: { re: 100, im: 0 }, expect: 'matches' },
    { name: 'its lower end', load: { re: 10, im: 0 }, expect: 'matches' },
    { name: 'its upper end', load: { re: 500, im: 0 }, expect: 'matches' },
    { name: 'a resistance below', load: { re: 9, im: 0 }, expect: 'outside' },
    { name: 'a resistance above', load: { re: 600, im: 0 }, expect: 'outside' },
    // In parallel 50 (1 + 2²) = 250 Ω.
    { name: 'a reactance both ways of which are inside', load: { re: 50, im: -100 }, expect: 'matches' },
    // In parallel 50 (1 + 4²) = 850 Ω: only a series element helps.
    { name: 'a reactance that one way leaves inside', load: { re: 50, im: 200 }, expect: 'doubtful' },
    // 5 Ω in series, 5 (1 + 4²) = 85 Ω in parallel.
    { name: 'a low resistance that a parallel element lifts', load: { re: 5, im: 20 }, expect: 'doubtful' },
    { name: 'an open end', load: openEnd, expect: 'outside' },
    { name: 'a short', load: shortEnd, expect: 'outside' },
    { name: 'a pure reactance', load: { re: 0, im: 100 }, expect: 'outside' },
  ])('$name: $expect (calculation: R and |Z|²/R)', ({ load, expect: verdict }) => {
    expect(matchOf(load, { minOhms: 10, maxOhms: 500 })).toBe(verdict);
  });
});

describe('laws', () => {
  it('whatever has no more than an SWR lies in the range that this SWR spans', () => {
    fc.assert(
      fc.property(passiveLoad, fc.double({ min: 1, max: 1000, noNaN: true }), (load, more) => {
        const maxSwr = swrOfLoad(load, 50) * more;
        const { minOhms, maxOhms } = rangeOfSwr(maxSwr, 50);
        expect(matchOf(load, { minOhms: minOhms * (1 - 1e-6), maxOhms: maxOhms * (1 + 1e-6) })).toBe('matches');
        expect(matchOfSwr(load, maxSwr, 50)).toBe('matches');
      }),
    );
  });
  it('more than its SWR is outside, wherever on the line it stands', () => {
    fc.assert(
      fc.property(randomLine, (line) => {
        const lossless = { ...line, z0: 50, lossDbPer100m: 0 };
        const swr = swrOfLoad(lossless.load, 50);
        fc.pre(swr > 1.01);
        expect(matchOfSwr(inputImpedance(lossless), swr / 1.005, 50)).toBe('outside');
      }),
    );
  });
});

describe('loss of a two-part network', () => {
  it.each([
    { from: 50, to: 200, q: 100, expect: 0.0759, source: 'calculation: Q = √3, -10 log(1 - 0.01732)' },
    { from: 2000, to: 50, q: 100, expect: 0.2801, source: 'calculation: Q = √39, -10 log(1 - 0.06245)' },
    { from: 50, to: 50, q: 100, expect: 0, source: 'calculation: Q = 0' },
  ])('$from Ω to $to Ω: $expect dB ($source)', ({ from, to, q, expect: db }) => {
    expect(matchLossDb(from, to, q)).toBeCloseTo(db, 4);
    expect(matchLossDb(to, from, q)).toBeCloseTo(db, 4);
  });
  it('no power comes through where the network asks for more Q than the coil has', () => {
    expect(matchLossDb(1, 10_001, 100)).toBe(Number.POSITIVE_INFINITY);
  });
});
