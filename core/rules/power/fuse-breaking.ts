import type { Circuit } from '../../circuit/circuit.ts';
import { unitName } from '../../station/parts.ts';
import { touchOf } from '../../trial/names.ts';
import { suppliesOf, unitOfPart } from '../../trial/parts.ts';
import { fuseName, fusePlace } from '../../trial/power/fuse-place.ts';
import { shortAmps, shortThrough } from '../../trial/power/short-amps.ts';
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
    fuse({ index, part }, { station, trial }, report) {
      const breaks = part.fuse.breakingAmps;
      // Most stations end here.
      if (allAmps(trial.circuit) <= breaks) return;
      const short = shortThrough(trial.circuit, trial.receive.on, { index, part });
      if (!short || short.backedUp || short.amps <= breaks) return;
      const unit = unitOfPart(short.from);
      report({
        message: 'breaks',
        severity: short.amps > hopelessTimes * breaks ? 'danger' : 'doubt',
        at: [fusePlace(station, part), { unit }],
        values: { fuse: fuseName(station, part), breaks, supply: unitName(station, unit), amps: short.amps },
        weight: short.amps / breaks,
        touches: [touchOf(part.origin)],
      });
    },
  },
});

/** What all supplies together give into a short at their own posts. */
const allAmps = (circuit: Circuit): number =>
  suppliesOf(circuit).reduce((sum, { part }) => sum + shortAmps(part, part.spec.sourceOhms), 0);
