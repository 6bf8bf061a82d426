import { classOf, findCable } from '../../station/parts.ts';
import { instantsOfPart, momentWords } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

/** More direct current than this has no business in a screen; a coax braid bears more than a thin screen. */
const usualAmps = 1;
const braidAmps = 3;

export const returnThroughShield = defineRule({
  id: 'power/return-through-shield',
  severity: 'doubt',
  title: 'Supply current returns through a screen',
  compares: 'the direct current in the screens of coax, audio, keying and data cables against the station’s limit',
  why: 'Current in an audio or data screen is heard as hum and whine, and a thin braid is no minus lead: it warms, and one day it is the only one.',
  advice:
    'Make the minus leads shorter and thicker, bring them to one point, and bond the boxes to each other with braid.',
  source:
    'common practice: an ampere in a thin screen, three in a coax braid; the station’s own limit where one is set',
  follows: ['power/return-missing', 'power/short-circuit', 'power/reversed-polarity', 'power/fuse-will-open'],
  messages: { shared: 'The screen of {cable} carries {amps A} of supply current {moment}; {limit A} is a lot for it.' },
  looksAt: {
    wire({ index, part: { origin } }, { station, trial }, report) {
      const cable = origin.role === 'return' ? findCable(station, origin.cable) : undefined;
      if (!cable || ['dc', 'earth'].includes(classOf(station, cable))) return;
      const usual = classOf(station, cable) === 'rf' ? braidAmps : usualAmps;
      const limit = station.settings.maxScreenAmps ?? usual;
      for (const { name, reach } of instantsOfPart(trial, index)) {
        const amps = Math.abs(reach.dc.ampsIn(index));
        if (amps <= limit) continue;
        report({
          message: 'shared',
          severity: 'doubt',
          at: [{ cable: cable.id }],
          values: { cable: cable.number, amps, moment: momentWords[name], limit },
          moment: name,
          weight: amps,
        });
      }
    },
  },
});
