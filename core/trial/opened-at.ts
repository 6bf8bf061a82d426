import type { Trial } from '../keydown/key-down.ts';
import { remember } from '../station/remember.ts';

/** By fuse (a part), the amperes at which it opens at rest. */
const openedIn = remember(
  ({ opened }: Trial): ReadonlyMap<number, number> => new Map(opened.map(({ part, amps }) => [part, amps])),
);

/** The amperes at which a fuse (a part) opens at rest; undefined where it holds. */
export const openedAt = (trial: Trial, fuse: number): number | undefined => openedIn(trial).get(fuse);
