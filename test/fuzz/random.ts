/** Chance that is the same every time for the same seed. */
export interface Random {
  /** From 0 up to and without 1. */
  readonly share: () => number;
  /** A whole number from 0 up to and without `below`. */
  readonly below: (below: number) => number;
  readonly chance: (share: number) => boolean;
  /** One of a list; undefined where it is empty. */
  readonly pick: <T>(list: readonly T[]) => T | undefined;
  /** One of a list that is not empty. */
  readonly one: <T>(list: readonly [T, ...T[]]) => T;
}

/** Mulberry32, by Tommy Ettinger (public domain, 2017): small, and good enough to choose what to break. */
export function randomFrom(seed: number): Random {
  let state = Math.imul(seed + 1, 0x9e3779b1) >>> 0;
  const share = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (n: number) => Math.floor(share() * n);
  return {
    share,
    below,
    chance: (most) => share() < most,
    pick: (list) => list[below(list.length)],
    one: (list) => list[below(list.length)] ?? list[0],
  };
}
