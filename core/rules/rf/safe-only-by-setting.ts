import { wattsFromDbm } from '../../quantity/decibel.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { defineRule } from '../rule.ts';

/** Ratings have this much room. */
const roomTimes = 1.25;

export const safeOnlyBySetting = defineRule({
  id: 'rf/safe-only-by-setting',
  severity: 'doubt',
  title: 'Safe by a setting alone',
  compares: 'the most that each transmitter can make against what the units on its way stand',
  why: 'One turn of the power knob, one lost memory, and the next unit gets what it cannot stand.',
  advice:
    'Put an attenuator between the two that makes the transmitter’s most harmless, or lock the setting and label it.',
  source: 'the units’ own figures; a quarter over a rating is common practice’s room',
  follows: ['rf/amplifier-overdriven', 'rf/load-overpowered', 'rf/transmit-into-nothing', 'rf/changeover-reversed'],
  messages: {
    most: '{transmitter} is set to {set W}; at the {most W} that it can make {unit} gets {watts W}, and it stands {limit W}.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station, trial }, report) {
      const { dbm, maxDbm = dbm } = source.spec;
      const times = wattsFromDbm(maxDbm) / wattsFromDbm(dbm);
      if (times <= 1) return;
      for (const { edge, from } of chain.steps) {
        const watts = chain.ports.find((p) => p.port === from)?.forwardWatts ?? 0;
        const limit = edge.maxWatts;
        if (
          limit === null ||
          watts > 1.02 * limit ||
          watts * times <= roomTimes * limit ||
          edge.origin.type !== 'element'
        )
          continue;
        report({
          message: 'most',
          severity: 'doubt',
          at: [rfPortRef(trial.circuit, from)],
          values: {
            transmitter: unitName(station, source.unit),
            set: wattsFromDbm(dbm),
            most: wattsFromDbm(maxDbm),
            unit: unitName(station, edge.origin.unit),
            watts: watts * times,
            limit,
          },
          weight: watts * times,
          touches,
        });
        // Behind an amplifier its own most is what counts.
        if (edge.lossDb < 0) break;
      }
    },
  },
});
