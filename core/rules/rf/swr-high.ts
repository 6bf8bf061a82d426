import { formatDecimals } from '../../quantity/format.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { defineRule } from '../rule.ts';

/** From here transmitters begin to reduce their power, and from there they suffer. */
const reducesSwr = 2;
const suffersSwr = 3;

export const swrHigh = defineRule({
  id: 'rf/swr-high',
  severity: 'fault',
  title: 'High SWR at the transmitter',
  compares: 'the SWR that the transmitter sees, worked back from where its power ends through every cable and unit',
  why: 'Power comes back: a modern transmitter turns itself down, an older one burns its output stage.',
  advice:
    'Trim the antenna for this frequency, or put a tuner where the mismatch is: at the antenna it saves the cable’s loss too.',
  source: 'common practice: transmitters reduce their power from 2:1 on and are made for no more than 3:1',
  follows: [
    'rf/transmit-into-nothing',
    'rf/changeover-reversed',
    'rf/tuner-out-of-reach',
    'rf/no-changeover',
    'drawing/fits-but-should-not',
  ],
  messages: {
    high: '{transmitter} sees an SWR of {swr}: {reflected W} of {forward W} comes back from {end}.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station, trial }, report) {
      const [start] = chain.ports;
      // With nothing at its end the open way is the finding.
      if (!start || start.swr <= reducesSwr || chain.ends.length === 0) return;
      const far = chain.ends.reduce((most, end) => (end.watts > most.watts ? end : most));
      report({
        message: 'high',
        severity: start.swr > suffersSwr ? 'fault' : 'doubt',
        at: [rfPortRef(trial.circuit, source.port), { unit: far.load.unit }],
        values: {
          transmitter: unitName(station, source.unit),
          swr: start.swr > 99 ? 'over 99' : formatDecimals(start.swr, 1),
          reflected: start.reflectedWatts,
          forward: start.forwardWatts,
          end: unitName(station, far.load.unit),
        },
        moment: 'sending',
        weight: start.swr,
        touches,
      });
    },
  },
});
