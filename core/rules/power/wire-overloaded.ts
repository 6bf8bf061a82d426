import { thickerLead } from '../../fixes/leads.ts';
import { findCable } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { limitOfWire } from '../../trial/power/guarded-wire.ts';
import { defineRule, fixed } from '../rule.ts';
import type { WirePart } from '../things.ts';

export const wireOverloaded = defineRule({
  id: 'power/wire-overloaded',
  severity: 'danger',
  title: 'More current than the wire stands',
  compares: 'the current in each core and screen of each cable, in every moment, against what the wire tables allow',
  why: 'The insulation softens, cores touch, and a wire in a bundle has nowhere to send its heat.',
  advice: 'Use the next thicker wire, or share the load over two leads, each with its own fuse.',
  source: 'the wire tables named in the message; the cautious one where several apply',
  follows: [
    'power/short-circuit',
    'power/return-missing',
    'power/fuse-will-open',
    'power/supplies-in-parallel',
    'power/reversed-polarity',
  ],
  messages: {
    core: '{cable} carries {amps A} {moment}; it is {wire}, which stands {limit rated} ({source}).',
    screen: 'The screen of {cable} carries {amps A} {moment}; it stands {limit rated} ({source}).',
  },
  looksAt: {
    wire({ index, part }, { station, trial }, report) {
      const limit = limitOfWire(station, part.origin);
      if (!limit) return;
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const amps = Math.abs(reach.dc.ampsIn(index));
        // What is just at the limit is inside it, rounding apart.
        if (amps <= 1.005 * limit.limitAmps) continue;
        report({
          message: isScreen(station, part) ? 'screen' : 'core',
          severity: 'danger',
          at: [{ cable: part.origin.cable }],
          values: {
            cable: limit.number,
            amps,
            moment: momentWords[name],
            wire: limit.wire,
            limit: limit.limitAmps,
            source: limit.limitSource,
          },
          moment: name,
          weight: amps / limit.limitAmps,
          ...fixed(fixOf(station, part.origin.cable, amps)),
        });
      }
    },
  },
});

/** A lead that stands a quarter more than flows, and its own fuse. */
function fixOf(station: Station, id: string, amps: number) {
  const cable = findCable(station, id);
  return cable && thickerLead(station, cable, Math.max(1.25 * amps, cable.fuse?.amps ?? 0));
}

const isScreen = (station: Station, { origin }: WirePart): boolean =>
  origin.role === 'return' && station.cableKinds[findCable(station, origin.cable)?.kind ?? '']?.screen !== undefined;
