/*
 * Numbers from 0 up to and without 1 that look random and are the same for a seed on every machine. There are two ways,
 * because what was drawn with each has become part of tests: networks with known answers, stations of known sizes.
 */

/** Mulberry32, by Tommy Ettinger (public domain, 2017): small, and good enough to choose what to break. */
export function mulberryShares(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Linear congruential, with the factors of Numerical Recipes (from memory). */
export function congruentialShares(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
