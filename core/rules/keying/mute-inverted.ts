import { unitName } from '../../station/parts.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { isMuted } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

export const muteInverted = defineRule({
  id: 'keying/mute-inverted',
  severity: 'fault',
  title: 'The mute works the wrong way round',
  compares: 'each receiver’s mute in receive and in sending',
  why: 'The receiver is deaf while you listen, and open while you send.',
  advice:
    'Some receivers are silenced by a closed contact, some by an open one: use the changeover’s other contact, or set the receiver to the other sense.',
  source: 'common practice',
  follows: ['power/not-powered', 'power/reversed-polarity'],
  messages: { inverted: '{receiver} is muted in receive, and open while {transmitter} sends.' },
  looksAt: {
    region({ number, sources, receivers }, { station, trial }, report) {
      for (const receiver of receivers) {
        if (!isMuted(trial, trial.receive, receiver.unit)) continue;
        const open = instantsOfRegion(trial, number).find(
          ({ name, reach }) =>
            name === 'sending' && reach.rf.at(number).fields.length > 0 && !isMuted(trial, reach, receiver.unit),
        );
        const source = open && trial.circuit.rf.sources[open.reach.rf.at(number).fields[0]?.source ?? -1];
        if (!source || !sources.includes(source) || source.unit === receiver.unit) continue;
        const names = { receiver: unitName(station, receiver.unit), transmitter: unitName(station, source.unit) };
        report({
          message: 'inverted',
          severity: 'fault',
          at: [{ unit: receiver.unit }],
          values: names,
        });
      }
    },
  },
});
