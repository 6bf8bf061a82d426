import type { Trial } from '../../keydown/key-down.ts';
import { unitName } from '../../station/parts.ts';
import { fuseName, fusePlace } from '../../trial/fuse-place.ts';
import { touchOf } from '../../trial/names.ts';
import { fusesOf, suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { shortAmps, shortsThroughFuses } from '../../trial/short-amps.ts';
import { defineRule } from '../rule.ts';

/** So many times over what it is made to break, nobody can hope that it does. */
const hopelessTimes = 3;

export const fuseBreaking = defineRule({
  id: 'power/fuse-breaking',
  severity: 'danger',
  title: 'The fuse may not break a short',
  compares: 'what a short just behind a fuse would drive through it against what that fuse can break',
  why: 'A fuse that has to break more than it is made for bursts, or goes on burning as an arc: it no longer protects anything.',
  advice:
    'Fit a fuse made for batteries next to the battery, and enter what its sheet says it breaks: the smaller fuses behind it are then backed up.',
  source:
    'ABYC E-11, table V-A: fuses at a battery break what it can give; blade fuses 1000 A at 32 V DC (data sheet, typical), glass 35 A or ten times the rating (IEC 60127-2); danger from three times that on is a judgement',
  follows: [],
  messages: {
    breaks: '{fuse} can break {breaks rated}, and in a short just behind it {supply} drives {amps A} through it.',
  },
  looksAt: {
    station({ station, hookups }, report) {
      for (const { hookup, trial } of hookups) {
        if (!isWorthTracing(trial)) continue;
        const shorts = shortsThroughFuses(trial.circuit, trial.receive.on);
        for (const { index, part } of fusesOf(trial.circuit)) {
          const short = shorts.get(index);
          const breaks = part.fuse.breakingAmps;
          if (!short || short.backedUp || short.amps <= breaks) continue;
          const unit = unitOfPart(short.from);
          report({
            message: 'breaks',
            severity: short.amps > hopelessTimes * breaks ? 'danger' : 'doubt',
            at: [fusePlace(station, part), { unit }],
            values: { fuse: fuseName(station, part), breaks, supply: unitName(station, unit), amps: short.amps },
            hookup: hookup.id,
            weight: short.amps / breaks,
            touches: [touchOf(part.origin)],
          });
        }
      }
    },
  },
});

/** Whether all supplies together can give more than the weakest fuse breaks; most stations end here. */
function isWorthTracing({ circuit }: Trial): boolean {
  const all = suppliesOf(circuit).reduce((sum, { part }) => sum + shortAmps(part, part.spec.sourceOhms), 0);
  return fusesOf(circuit).some(({ part }) => part.fuse.breakingAmps < all);
}
