import { wattsFromDbm } from '../../quantity/decibel.ts';
import { formatDecimals } from '../../quantity/format.ts';
import { judgeHarmonic, part97Limit } from '../../rf/harmonics.ts';
import { harmonicsAlong } from '../../rf/harmonics-along.ts';
import { unitName } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

export const harmonics = defineRule({
  id: 'rf/harmonics',
  severity: 'doubt',
  title: 'Harmonics above the limit',
  compares:
    'the second and third harmonic at the antenna, less what filters on the way take, against the limit for this power',
  why: 'They fall on other people’s bands, and the licence makes the operator answer for them.',
  advice:
    'Put a low-pass filter for this band behind the last stage that amplifies; the decibels that are missing say how good it has to be.',
  source: '47 CFR 97.307(d) and (e) for equipment installed after 1 January 2003; the local rules decide',
  follows: ['rf/transmit-into-nothing', 'rf/wrong-band'],
  messages: {
    over: 'Harmonic {order} of {transmitter} reaches {antenna} with {level dBm}, {over} dB more than {source} allows.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station, trial }, report) {
      const { hertz } = trial.circuit.rf;
      const along = harmonicsAlong(chain, hertz, source.spec.harmonicsDbc);
      for (const { load } of chain.ends) {
        if (load.spec.role !== 'antenna') continue;
        for (const { order, dbm, carrierDbm } of along.get(load.port) ?? []) {
          const carrier = { watts: wattsFromDbm(carrierDbm), hertz };
          const judged = judgeHarmonic(carrier, { harmonicDbc: dbm - carrierDbm }, part97Limit);
          if (!judged || judged.within) continue;
          report({
            message: 'over',
            severity: 'doubt',
            at: [{ unit: load.unit }],
            values: {
              order,
              transmitter: unitName(station, source.unit),
              antenna: unitName(station, load.unit),
              level: dbm,
              over: formatDecimals(-judged.marginDb, 1),
              source: part97Limit(carrier)?.source ?? '',
            },
            weight: -judged.marginDb,
            touches,
          });
        }
      }
    },
  },
});
