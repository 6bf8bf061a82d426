import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { defineRule } from '../rule.ts';

/** Below this share of full scale a needle cannot be read. */
const leastShare = 0.05;

export const meterRange = defineRule({
  id: 'rf/meter-range',
  severity: 'doubt',
  title: 'The meter’s scale does not suit the power',
  compares: 'the power through each meter against its full scale',
  why: 'A needle that hardly moves tells nothing about the SWR, and one at its stop tells nothing either.',
  advice: 'Use a meter, or a range of it, whose scale the power fills by a fifth at least.',
  source: 'common practice: read between a fifth and the whole of the scale; a twentieth cannot be read',
  follows: ['rf/transmit-into-nothing', 'rf/changeover-reversed'],
  messages: {
    low: '{watts W} from {transmitter} hardly move {meter}, whose scale ends at {scale W}.',
    high: '{watts W} from {transmitter} go beyond {meter}’s scale of {scale W}.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station, trial }, report) {
      for (const { edge, from } of chain.steps) {
        const scale = edge.spec?.type === 'rfPath' ? edge.spec.scaleWatts : undefined;
        if (scale === undefined || edge.origin.type !== 'element') continue;
        const watts = chain.ports.find((p) => p.port === from)?.forwardWatts ?? 0;
        // What burns a meter is another rule's business.
        const burns = edge.maxWatts !== null && watts > edge.maxWatts;
        if ((watts >= leastShare * scale && watts <= scale) || burns) continue;
        report({
          message: watts > scale ? 'high' : 'low',
          severity: 'doubt',
          at: [rfPortRef(trial.circuit, from)],
          values: {
            transmitter: unitName(station, source.unit),
            meter: unitName(station, edge.origin.unit),
            watts,
            scale,
          },
          weight: watts,
          touches,
        });
      }
    },
  },
});
