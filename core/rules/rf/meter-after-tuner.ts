import { unitName } from '../look.ts';
import { defineRule } from '../rule.ts';
import { sendingChains } from './chains.ts';

export const meterAfterTuner = defineRule({
  id: 'rf/meter-after-tuner',
  severity: 'note',
  title: 'The meter sees the line, not the match',
  compares: 'the order of meter and tuner on the way from each transmitter',
  why: 'Behind the tuner a meter shows the SWR of the antenna, which the tuner does not change: nobody sees whether the transmitter is matched.',
  advice: 'Put the meter between transmitter and tuner; a second one behind an amplifier is fine.',
  source: 'common practice',
  follows: ['rf/transmit-into-nothing', 'rf/changeover-reversed'],
  messages: { behind: '{meter} stands behind {tuner}: {transmitter}’s own match shows on no meter.' },
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      for (const { source, chain, touches } of sendingChains(trial)) {
        const units = chain.steps.flatMap(({ edge }) =>
          edge.origin.type === 'element' ? [{ unit: edge.origin.unit, spec: edge.spec }] : [],
        );
        const isMeter = ({ spec }: (typeof units)[number]) => spec?.type === 'rfPath' && spec.scaleWatts !== undefined;
        const [meter, tuner] = [units.findIndex(isMeter), units.findIndex(({ spec }) => spec?.type === 'matcher')];
        const [own, other] = [units[meter], units[tuner]];
        if (!own || !other || meter < tuner) continue;
        report({
          message: 'behind',
          severity: 'note',
          at: [{ unit: own.unit }],
          values: {
            meter: unitName(station, own.unit),
            tuner: unitName(station, other.unit),
            transmitter: unitName(station, source.unit),
          },
          hookup: hookup.id,
          touches,
        });
      }
    }
  },
});
