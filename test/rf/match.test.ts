import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchOf } from '../../core/rf/match-of.ts';
import { openEnd } from '../../core/rf/reflection.ts';
import { passiveLoad } from './random-line.ts';
import { swrOfLoad } from './walk.ts';

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
    { name: 'a short', load: { re: 0, im: 0 }, expect: 'outside' },
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
        // Z0/S to Z0 S, and a little more for the rounding.
        const [minOhms, maxOhms] = [(50 / maxSwr) * (1 - 1e-6), 50 * maxSwr * (1 + 1e-6)];
        expect(matchOf(load, { minOhms, maxOhms })).toBe('matches');
      }),
    );
  });
});
