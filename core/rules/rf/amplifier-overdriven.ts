import { wattsFromDbm } from '../../quantity/decibel.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { defineRule } from '../rule.ts';

/** So much below what brings an amplifier to its full output it is hardly driven. */
const littleDb = 10;

export const amplifierOverdriven = defineRule({
  id: 'rf/amplifier-overdriven',
  severity: 'danger',
  title: 'The amplifier is not driven as it should be',
  compares: 'the power that comes to each amplifier in use against the most that it stands and what it needs',
  why: 'Too much burns the input and splatters over the band; too little leaves an amplifier that only makes heat.',
  advice: 'Put an attenuator of the right decibels and watts before it, or set the transmitter to what it needs.',
  source: 'the amplifier’s own figures; 10 dB below full output is common practice',
  follows: ['rf/transmit-into-nothing', 'rf/changeover-reversed', 'rf/wrong-band'],
  messages: {
    over: '{transmitter} drives {amplifier} with {watts W}; it stands {limit W}.',
    little: '{transmitter} drives {amplifier} with {watts W}; it needs {need W} for its full output.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station, trial }, report) {
      for (const { edge, from } of chain.steps) {
        if (edge.lossDb >= 0 || edge.origin.type !== 'element') continue;
        const watts = chain.ports.find((p) => p.port === from)?.forwardWatts ?? 0;
        const need = edge.saturationDbm === null ? 0 : wattsFromDbm(edge.saturationDbm + edge.lossDb);
        const over = edge.maxWatts !== null && watts > 1.02 * edge.maxWatts;
        if (!over && watts * 10 ** (littleDb / 10) >= need) continue;
        report({
          message: over ? 'over' : 'little',
          severity: over ? 'danger' : 'doubt',
          at: [rfPortRef(trial.circuit, from)],
          values: {
            transmitter: unitName(station, source.unit),
            amplifier: unitName(station, edge.origin.unit),
            watts,
            ...(over ? { limit: edge.maxWatts ?? 0 } : { need }),
          },
          moment: 'sending',
          weight: over ? watts : -watts,
          touches,
        });
      }
    },
  },
});
