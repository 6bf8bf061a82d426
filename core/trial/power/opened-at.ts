import type { Trial } from '../../keydown/key-down.ts';

/** The amperes at which a fuse (a part) opens at rest; undefined where it holds. */
export const openedAt = ({ opened }: Trial, fuse: number): number | undefined =>
  opened.find(({ part }) => part === fuse)?.amps;
