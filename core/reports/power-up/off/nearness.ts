import type { Expected } from '../sheet.ts';

/** Whether a reading is what a suspect would show: as near as the sound reading would have to be, or within a tenth. */
export function isAbout({ from, to, value, quantity }: Expected, shows: number, read: number): boolean {
  if (quantity === 'swr' && shows > 3 && read > 3) return true;
  if (quantity === 'ohm' || quantity === 'swr') {
    if (Math.abs(shows - read) < 0.6 || (shows >= 1e6 && read >= 1e6)) return true;
    return Math.abs(Math.log(Math.max(shows, 0.01) / Math.max(read, 0.01))) < Math.log(1.6);
  }
  const half = to === null || value === null ? 0 : Math.max(to - value, value - from);
  return Math.abs(shows - read) <= Math.max(half, Math.abs(shows) * 0.1);
}

/** How far from it, as a share of what is expected. */
export const distance = ({ value }: Expected, shows: number, read: number): number =>
  Math.abs(shows - read) / Math.max(1e-6, Math.abs(value ?? 1));
