import type { Chain, ChainStep } from '../../rf/chain.ts';
import { unitName } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

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
  looksAt: {
    chain({ source, chain, touches }, { station }, report) {
      const meters = chain.steps.filter(isMeter);
      for (const meter of meters) {
        const before = stepsBefore(chain, meter);
        const tuner = before.findLast(({ edge }) => edge.spec?.type === 'matcher');
        if (!tuner || before.some(isMeter)) continue;
        const unit = unitOfStep(meter);
        report({
          message: 'behind',
          severity: 'note',
          at: [{ unit }],
          values: {
            meter: unitName(station, unit),
            tuner: unitName(station, unitOfStep(tuner)),
            transmitter: unitName(station, source.unit),
          },
          touches,
        });
      }
    },
  },
});

const isMeter = ({ edge: { spec } }: ChainStep): boolean => spec?.type === 'rfPath' && spec.scaleWatts !== undefined;

const unitOfStep = ({ edge: { origin } }: ChainStep): string => (origin.type === 'element' ? origin.unit : '');

/** The steps by which power comes to this one, the transmitter's first. */
function stepsBefore({ steps }: Chain, { from }: ChainStep): ChainStep[] {
  const before: ChainStep[] = [];
  for (let port = from; ; ) {
    const step = steps.find((s) => s.to === port);
    if (!step || before.includes(step)) return before;
    before.unshift(step);
    port = step.from;
  }
}
