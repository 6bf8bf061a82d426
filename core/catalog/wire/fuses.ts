import type { FuseFamily } from '../../station/schema/unit-kind.ts';
import { bladeColours, coldOhms, fuseRatings, hotShare, openingLimitsOf } from './fuse-tables.ts';

export { fuseRatings } from './fuse-tables.ts';

/**
 * Cold resistance of a fuse in ohms, by its rating in amperes: what a meter shows, and what the DC solution takes. A
 * fuse at its full rating has some 1.4 to 1.7 times that (`hotFuseOhms`), which is 0.05 V more at most. Between two rows of the table a straight line in
 * logarithms; outside the table the voltage across it at its rating stays that of the nearest row.
 *
 *     fuseOhms(10, 'blade') // 0.0077
 */
export function fuseOhms(rating: number, family: FuseFamily = 'blade'): number {
  const rows = coldOhms[family];
  const above = rows.findIndex(([amps]) => amps >= rating);
  const high = rows[above === -1 ? rows.length - 1 : above];
  const low = rows[above - 1];
  if (!high || rating <= 0) return 0;
  if (!low || above === -1) return (high[0] * high[1]) / rating;
  const along = Math.log(rating / low[0]) / Math.log(high[0] / low[0]);
  return low[1] * (high[1] / low[1]) ** along;
}

/**
 * Resistance of a fuse in ohms while it carries a current: the cold one, growing with the heat, which is as the square
 * of the current, to that of the data sheet's drop at the rating, and staying there beyond.
 *
 *     hotFuseOhms(10, 10, 'blade') // 0.0109
 */
export function hotFuseOhms(amps: number, rating: number, family: FuseFamily = 'blade'): number {
  if (rating <= 0) return 0;
  const heat = Math.min(1, (amps / rating) ** 2);
  return fuseOhms(rating, family) * (1 + (hotShare(family, rating) - 1) * heat);
}

/**
 * Between how many seconds a fuse opens at a current, as far as the standards’ limits (ISO 8820-3 in blade fuse data
 * sheets, IEC 60127-2 sheets 2 and 5) bind it; null where they make it hold. Between two limits the bounds are those
 * that both leave: no sooner than at the higher, no later than at the lower. `toS` is `Infinity` where it may hold.
 *
 *     openingTime(20, 10, 'blade') // { fromS: 0.15, toS: 5 }
 */
export function openingTime(
  amps: number,
  rating: number,
  family: FuseFamily = 'blade',
): { fromS: number; toS: number } | null {
  const limits = openingLimitsOf(family, rating);
  const times = amps / rating;
  // 1e-9: three times 0.1 is a little more than 0.3.
  const reached = limits.findLast((limit) => limit.times <= times * (1 + 1e-9));
  const ahead = limits.find((limit) => limit.times >= times * (1 - 1e-9));
  if (!reached || (reached === ahead && reached === limits[0])) return null;
  return { fromS: ahead?.fromS ?? 0, toS: reached.toS };
}

/** The smallest standard rating that is at least this current; null beyond the largest. */
export const nextFuse = (amps: number, family: FuseFamily = 'blade'): number | null =>
  fuseRatings[family].find((rating) => rating >= amps) ?? null;

/** The colour of a blade fuse, or null: glass fuses have none. */
export const fuseColour = (rating: number, family: FuseFamily = 'blade'): string | null =>
  family === 'blade' ? (bladeColours[rating] ?? null) : null;

/**
 * The largest current that a fuse can break, amperes: a blade fuse 1000 A at 32 V DC (data sheet, typical); a glass fuse
 * 35 A or ten times its rating, whichever is more (IEC 60127-2, low breaking capacity), far below a battery's short.
 */
export const fuseBreakingAmps = (rating: number, family: FuseFamily = 'blade'): number =>
  family === 'blade' ? 1000 : Math.max(35, 10 * rating);

/** So many metres of wire may run before its fuse: 7 in (33 CFR 183.455(b)). */
export const unfusedM = 0.18;

/** The share of its rating that a fuse carries; one of no rating at all is beyond it with any current, and not without. */
export const shareOfRating = (amps: number, ratedAmps: number): number => (amps === 0 ? 0 : amps / ratedAmps);
