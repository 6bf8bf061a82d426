import { mulberryShares } from '../shares.ts';

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

export function randomFrom(seed: number): Random {
  // Seeds that follow one another begin far apart.
  const share = mulberryShares(Math.imul(seed + 1, 0x9e3779b1));
  const below = (n: number) => Math.floor(share() * n);
  return {
    share,
    below,
    chance: (most) => share() < most,
    pick: (list) => list[below(list.length)],
    one: (list) => list[below(list.length)] ?? list[0],
  };
}
