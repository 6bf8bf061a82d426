import type { Trial } from '../../keydown/key-down.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { allMetal, joinedTo } from '../../trial/metal/conductors.ts';
import { touchOf } from '../../trial/names.ts';
import type { FusePart } from '../../trial/parts.ts';
import { suppliesAmong } from '../../trial/power/feeders.ts';
import { fuseName, fusePlace } from '../../trial/power/fuse-place.ts';
import { defineRule } from '../rule.ts';

/** A fuse of so many times what it carries, and more than so many amperes, guards the wire alone. */
const timesOver = 5;
const leastAmps = 5;

export const fuseOverUnit = defineRule({
  id: 'power/fuse-over-unit',
  severity: 'doubt',
  title: 'The fuse protects the wire only',
  compares: 'the rating of a fuse against the most that it ever carries',
  why: 'A fault inside the unit can draw many times its usual current, and this fuse lets it.',
  advice: 'Fit the next size above what the unit draws when it sends, with a quarter to spare.',
  source: 'common practice: a fuse of 1.25 to 2 times the largest current',
  follows: ['power/fuse-over-wire', 'power/fuse-will-open'],
  messages: {
    over: '{fuse} is rated {rated rated}, and the most that it carries is {amps A}: it protects the wire, not the unit.',
  },
  looksAt: {
    fuse({ index, part }, { station, trial }, report) {
      const rated = part.fuse.ratedAmps;
      if (rated <= leastAmps) return;
      const amps = Math.max(...instantsOfPart(trial, index).map(({ reach }) => Math.abs(reach.dc.ampsIn(index))));
      // A fuse with nothing behind it, or one that feeds a whole strip, is judged by what hangs on it.
      if (amps < 1e-3 || rated <= timesOver * amps || isBetweenSources(trial, index, part)) return;
      report({
        message: 'over',
        severity: 'doubt',
        at: [fusePlace(station, part)],
        values: { fuse: fuseName(station, part), rated, amps },
        weight: -amps,
        touches: [touchOf(part.origin)],
      });
    },
  },
});

/** Whether a source stands on either side, as a battery does behind its charger or its back-up relay: no unit's fuse. */
function isBetweenSources({ circuit }: Trial, index: number, { a, b }: FusePart): boolean {
  const around = allMetal(circuit, index);
  return [a, b].every((side) => suppliesAmong(circuit, joinedTo(around, side)).length > 0);
}
