import { instantsOf, receiversOf, rfPortRef, sourcesOf, unitName } from '../look.ts';
import { defineRule } from '../rule.ts';

export const noChangeover = defineRule({
  id: 'rf/no-changeover',
  severity: 'fault',
  title: 'Nothing changes the antenna over',
  compares: 'whether transmitter and receiver stay joined in receive and in sending',
  why: 'All that the transmitter makes goes into the receiver as well as into the antenna.',
  advice: 'Put an antenna changeover between the two, or give the receiver an antenna of its own.',
  source: 'common practice',
  follows: [],
  messages: {
    joined:
      '{transmitter} and {receiver} are joined all the time, in receive and in sending: nothing changes the antenna over between them.',
  },
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      const instants = instantsOf(trial);
      for (const source of sourcesOf(trial)) {
        for (const receiver of receiversOf(trial)) {
          if (receiver.unit === source.unit) continue;
          const always = instants.every(({ reach }) => reach.rf.group[source.port] === reach.rf.group[receiver.port]);
          if (!always) continue;
          report({
            message: 'joined',
            severity: 'fault',
            at: [rfPortRef(trial.circuit, source.port), rfPortRef(trial.circuit, receiver.port)],
            values: { transmitter: unitName(station, source.unit), receiver: unitName(station, receiver.unit) },
            hookup: hookup.id,
          });
        }
      }
    }
  },
});
