import { fuseOhms, hotFuseOhms, openingTime, shareOfRating } from '../../catalog/wire/fuses.ts';
import type { Trial } from '../../keydown/key-down.ts';
import type { TriedHookup } from '../../rules/rule.ts';
import type { Station } from '../../station/schema/schema.ts';
import { type FusePart, fusesOf } from '../../trial/parts.ts';
import { fusePlace, fuseSeat } from '../../trial/power/fuse-place.ts';
import { thinnestBehind } from '../../trial/power/guarded-wire.ts';
import { shortThrough } from '../../trial/power/short-amps.ts';
import { drawOf, inHookup } from './draw-of.ts';
import type { FuseRow } from './rows.ts';

/** What each fuse of a hook-up carries, and what it guards. */
export function fuseRows(station: Station, tried: TriedHookup): FuseRow[] {
  const { trial } = tried;
  return fusesOf(trial.circuit).flatMap(({ index, part }): FuseRow[] => {
    const draw = drawOf(station.plan, trial, index, Math.abs);
    const wire = thinnestBehind(station, trial.circuit, trial.receive.on, index);
    // A fuse of an outlet with nothing in it guards nothing.
    if (!wire && draw.receiveAmps < 1e-6 && draw.sendingAmps < 1e-6) return [];
    const place = fusePlace(station, part);
    const at =
      'cable' in place
        ? { cable: place.cable }
        : { unit: place.unit, ...(part.origin.type === 'element' && { element: part.origin.element }) };
    // Where it opened, the most is what it opened at.
    const peakAmps = Math.max(draw.peakAmps, trial.opened.find((o) => o.part === index)?.amps ?? 0);
    const row = {
      ...inHookup(tried),
      ...at,
      name: fuseSeat(station, part),
      ratedAmps: part.fuse.ratedAmps,
      ...draw,
      peakAmps,
      share: shareOfRating(draw.sendingAmps, part.fuse.ratedAmps),
      guards: wire ? `${wire.number}, ${wire.wire}` : '',
      wireLimitAmps: wire?.limitAmps ?? null,
      wireLimitSource: wire?.limitSource ?? '',
      ...strainOf(trial, index, part, peakAmps),
    };
    return [row];
  });
}

/** What the most that it ever carries, and what a short, would do to a fuse. */
function strainOf(trial: Trial, index: number, part: FusePart, peakAmps: number) {
  const { fuse } = part;
  const { ratedAmps, family, breakingAmps } = fuse;
  const time = openingTime(peakAmps, ratedAmps, family);
  return {
    opensInS: time && { from: time.fromS, to: Number.isFinite(time.toS) ? time.toS : null },
    coldOhms: fuseOhms(ratedAmps, family),
    hotOhms: hotFuseOhms(peakAmps, ratedAmps, family),
    breakingAmps,
    shortAmps: shortThrough(trial.circuit, trial.receive.on, { index, part })?.amps ?? null,
  };
}
