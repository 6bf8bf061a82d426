import { isOpenEnd } from '../../rf/reflection.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { defineRule } from '../rule.ts';

export const tunerOutOfReach = defineRule({
  id: 'rf/tuner-out-of-reach',
  severity: 'doubt',
  title: 'The tuner cannot match what it sees',
  compares:
    'the impedance that each tuner sees while the station sends against the range that it matches, and the power that comes to it against what it needs to tune',
  why: 'It turns and turns and finds nothing, or finds a match in which its own coil takes the power; relays that move under power burn.',
  advice:
    'Another length of wire or feeder brings the impedance into its range; a tuner of a wider range, or one at the antenna, does too.',
  source: 'the tuner’s own range of resistances; a network leaves the load’s R or makes |Z|²/R of it',
  follows: ['rf/transmit-into-nothing', 'rf/changeover-reversed'],
  messages: {
    outside: '{tuner} sees {ohms} at this frequency; it matches {low Ω} to {high Ω}.',
    doubtful:
      '{tuner} sees {ohms} at this frequency, at the edge of the {low Ω} to {high Ω} that it matches: it may or may not find a match.',
    hot: '{tuner} gets {watts W} from {transmitter} whenever it tunes; its relays may move at {most W} at most.',
    weak: '{tuner} gets {watts W} from {transmitter}; it needs {need W} to tune by itself.',
  },
  looksAt: {
    chain({ source, chain, touches }, { station, trial }, report) {
      for (const { edge, from, to, match } of chain.steps) {
        const { spec, origin } = edge;
        if (spec?.type !== 'matcher' || origin.type !== 'element') continue;
        const watts = chain.ports.find((p) => p.port === from)?.forwardWatts ?? 0;
        const { maxTuneWatts: most, minWatts: need = 0 } = spec;
        if (most !== undefined && watts > most)
          report({
            message: 'hot',
            severity: 'doubt',
            at: [rfPortRef(trial.circuit, from)],
            values: {
              tuner: unitName(station, origin.unit),
              transmitter: unitName(station, source.unit),
              watts,
              most,
            },
            weight: watts,
            touches,
          });
        if (watts < need)
          report({
            message: 'weak',
            severity: 'doubt',
            at: [rfPortRef(trial.circuit, from)],
            values: {
              tuner: unitName(station, origin.unit),
              transmitter: unitName(station, source.unit),
              watts,
              need,
            },
            weight: -watts,
            touches,
          });
        if (match === null || match === 'matches') continue;
        // With nothing behind it the open way is the finding.
        const seen = chain.ports.find((p) => p.port === to)?.ohms;
        if (!seen || isOpenEnd(seen)) continue;
        report({
          message: match,
          severity: match === 'outside' ? 'doubt' : 'note',
          at: [{ unit: origin.unit, port: rfPortRef(trial.circuit, to).port }],
          values: {
            tuner: unitName(station, origin.unit),
            ohms: `${Number(seen.re.toPrecision(2))} ${seen.im < 0 ? '−' : '+'} j${Math.abs(Number(seen.im.toPrecision(2)))} Ω`,
            low: spec.minOhms,
            high: spec.maxOhms,
          },
          touches,
        });
      }
    },
  },
});
