import { isOpenGate, type RfEdge } from '../../circuit/circuit.ts';
import { formatDecimals } from '../../quantity/format.ts';
import { amplifyingRings } from '../../rf/amplifying-rings.ts';
import { edgesAround } from '../../rf/spread.ts';
import { unitName } from '../../station/parts.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

export const rfFeedback = defineRule({
  id: 'rf/rf-feedback',
  severity: 'fault',
  title: 'An amplifier feeds itself',
  compares: 'the gain of each amplifier in use against what is lost on the way from its output back to its input',
  why: 'Where more comes back than is lost it oscillates: full output with nobody at the key, on a frequency of its own.',
  advice:
    'Take out the way back: a second cable around it, a receive line, a bypass or a second relay that does not isolate enough.',
  source: 'a loop oscillates where its gain is above 0 dB (Barkhausen)',
  follows: ['rf/changeover-reversed'],
  messages: {
    loop: '{amplifier} has {gain} dB of gain, and only {loss} dB are lost on the way from its output back to its input.',
    ring: '{amplifiers} feed one another: together they have {gain} dB of gain, and only {loss} dB are lost on the way round.',
  },
  looksAt: {
    anyRegion({ number, edges }, { station, trial }, report) {
      if (edges.every((edge) => edge.lossDb >= 0)) return;
      const around = edgesAround(edges);
      for (const { name, reach } of instantsOfRegion(trial, number)) {
        const open = new Set(edges.flatMap((edge, i) => (isOpenGate(edge.gate, reach.on) ? [i] : [])));
        for (const { stages, gainDb, lossDb } of amplifyingRings({ edges, around, open })) {
          const units = [...new Set(stages.flatMap(unitOf))];
          const [unit, ...others] = units;
          if (unit === undefined) continue;
          const names = units.map((id) => unitName(station, id));
          const figures = { gain: formatDecimals(gainDb, 1), loss: formatDecimals(lossDb, 1) };
          report({
            message: stages.length > 1 ? 'ring' : 'loop',
            severity: 'fault',
            at: [{ unit }, ...others.map((other) => ({ unit: other }))],
            values:
              stages.length > 1
                ? { amplifiers: names.join(' and '), ...figures }
                : { amplifier: names[0] ?? '', ...figures },
            moment: name,
            weight: gainDb - lossDb,
          });
        }
      }
    },
  },
});

const unitOf = ({ origin }: RfEdge): string[] => (origin.type === 'element' ? [origin.unit] : []);
