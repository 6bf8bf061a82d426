import type { RfLoad, RfSource } from '../../circuit/circuit.ts';
import type { Trial } from '../../keydown/key-down.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { type Instant, instantsOfRegion } from '../../trial/instants.ts';
import { assumedOverloadDbm, fieldOf } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

export const noChangeover = defineRule({
  id: 'rf/no-changeover',
  severity: 'fault',
  title: 'Nothing changes the antenna over',
  compares: 'whether transmitter and receiver stay joined in receive and in sending',
  why: 'All that the transmitter makes goes into the receiver as well as into the antenna.',
  advice: 'Put an antenna changeover between the two, or give the receiver an antenna of its own.',
  source: 'common practice',
  judgesDrawing: true,
  follows: [],
  messages: {
    joined:
      '{transmitter} and {receiver} are joined all the time, in receive and in sending: nothing changes the antenna over between them.',
  },
  looksAt: {
    region({ number, sources, receivers }, { station, trial }, report) {
      const instants = instantsOfRegion(trial, number);
      const pairs = sources.flatMap((source) => receivers.map((receiver) => ({ source, receiver })));
      for (const { source, receiver } of pairs) {
        if (receiver.unit === source.unit) continue;
        const always = instants.every(({ reach: { rf } }) => rf.groupOf(source.port) === rf.groupOf(receiver.port));
        if (!always || isTapped(instants, trial, source, receiver)) continue;
        report({
          message: 'joined',
          severity: 'fault',
          at: [rfPortRef(trial.circuit, source.port), rfPortRef(trial.circuit, receiver.port)],
          values: { transmitter: unitName(station, source.unit), receiver: unitName(station, receiver.unit) },
        });
      }
    },
  },
});

/** A receiver on a coupler so weak that the transmitter does not even block it is meant to hang there. */
function isTapped(instants: readonly Instant[], trial: Trial, source: RfSource, receiver: RfLoad): boolean {
  const levels = instants.flatMap(({ reach }) => fieldOf(trial, reach, source)?.best.get(receiver.port)?.dbm ?? []);
  return levels.length > 0 && Math.max(...levels) <= (receiver.spec.overloadDbm ?? assumedOverloadDbm);
}
