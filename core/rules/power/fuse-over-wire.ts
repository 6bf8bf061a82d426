import type { WireLimit } from '../../catalog/wire/wire.ts';
import { fittingFuse, smallerFuse, thickerLead } from '../../fixes/leads.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { formatRating } from '../../quantity/format.ts';
import { findCable, unitOf } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { touchOf } from '../../trial/names.ts';
import type { FusePart } from '../../trial/parts.ts';
import { fuseName, fusePlace } from '../../trial/power/fuse-place.ts';
import { type LimitedWire, thinnestBehind } from '../../trial/power/guarded-wire.ts';
import { defineRule, fixed } from '../rule.ts';

export const fuseOverWire = defineRule({
  id: 'power/fuse-over-wire',
  severity: 'danger',
  title: 'The fuse is too big for the wire',
  compares: 'the rating of a fuse against what the thinnest wire behind it stands',
  why: 'In a short the wire glows before the fuse opens: that is how a shack catches fire.',
  advice: 'Fit the fuse that the load needs, or use a thicker wire.',
  source:
    'the cautious rule: NEC 240.4(D) from 18 to 10 AWG, AC 43.13-1B tables 11-3 and 11-9 outside; the upper bound is 33 CFR 183.455(c): 150 % of its own table',
  follows: [],
  messages: {
    over: '{fuse} is rated {rated rated}, but {cable} behind it is {wire}, which stands {limit rated} ({source}).{upper}',
  },
  looksAt: {
    fuse({ index, part }, { station, trial }, report) {
      const wire = thinnestBehind(station, trial.circuit, trial.receive.on, index);
      if (!wire || part.fuse.ratedAmps <= wire.limitAmps) return;
      report({
        message: 'over',
        severity: 'danger',
        at: [fusePlace(station, part), { cable: wire.cable }],
        values: {
          fuse: fuseName(station, part),
          rated: part.fuse.ratedAmps,
          cable: wire.number,
          wire: wire.wire,
          limit: wire.limitAmps,
          source: wire.limitSource,
          upper: upperWords(wire.upper),
        },
        touches: [touchOf(part.origin)],
        ...fixed(fixOf(station, trial, index, part, wire)),
      });
    },
  },
});

/** The fuse that the load needs and the wire allows; where there is none, a wire that the fuse guards. */
function fixOf(station: Station, trial: Trial, index: number, { origin, fuse }: FusePart, wire: LimitedWire) {
  const amps = Math.max(...instantsOfPart(trial, index).map(({ reach }) => Math.abs(reach.dc.ampsIn(index))));
  const own = origin.type === 'cableFuse' ? findCable(station, origin.cable) : undefined;
  const rating = fittingFuse(amps, wire.limitAmps);
  if (own) return smallerFuse(own, amps, wire.limitAmps);
  if (origin.type === 'element' && rating !== null && amps > 0) {
    const unit = unitOf(station, origin.unit);
    const overrides = { ...unit.overrides, [`${origin.element}.fuseAmps`]: rating };
    return {
      name: `Fit a ${rating} A fuse in ${unit.name}`,
      change: { type: 'updateUnit', id: unit.id, set: { overrides } },
    } as const;
  }
  const cable = findCable(station, wire.cable);
  return cable && thickerLead(station, cable, fuse.ratedAmps);
}

/** The most that any rule allows, named as what it is. */
const upperWords = (upper: WireLimit | null): string =>
  upper ? ` The most that any rule allows, on boats, is ${formatRating(upper.amps)} (${upper.source}).` : '';
