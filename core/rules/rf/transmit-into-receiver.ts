import { isOpenGate } from '../../circuit/circuit.ts';
import { wayTo } from '../../rf/rf-solution.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion, momentWords } from '../../trial/instants.ts';
import { rfPortName } from '../../trial/names.ts';
import { assumedDamageDbm, isMuted, touchesOnWay } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

export const transmitIntoReceiver = defineRule({
  id: 'rf/transmit-into-receiver',
  severity: 'danger',
  title: 'Transmit power reaches a receiver',
  compares: 'the RF at every receiver input, in every moment, against its damage and its overload level',
  why: 'A few hundred milliwatts burn the first coil or diode of a receiver; a few microwatts too many block it.',
  advice: 'See by which way it comes, and have that way switched over before RF starts.',
  source: 'the receiver’s own figures; without one, +10 dBm (assumed: the level laboratories test with)',
  follows: ['rf/changeover-reversed', 'rf/no-changeover', 'keying/no-mute', 'drawing/fits-but-should-not'],
  messages: {
    damage:
      '{level dBm} ({watts W}) from {transmitter} reaches {port} {moment}, by way of {way}; it stands {limit dBm}{assumed}.',
    overload:
      '{level dBm} from {transmitter} reaches {port} while it is open, by way of {way}; it is blocked above {limit dBm}.',
  },
  looksAt: {
    region({ number, receivers }, { station, trial }, report) {
      const { circuit } = trial;
      for (const { name, reach } of instantsOfRegion(trial, number)) {
        const fields = reach.rf.at(number).fields;
        for (const { field, receiver } of fields.flatMap((field) =>
          receivers.map((receiver) => ({ field, receiver })),
        )) {
          const source = circuit.rf.sources[field.source];
          const arrival = field.best.get(receiver.port);
          if (!source || !arrival || !isOpenGate(receiver.gate, reach.on)) continue;
          const damage = receiver.spec.damageDbm ?? assumedDamageDbm;
          const overload = receiver.spec.overloadDbm;
          const burns = arrival.dbm > damage;
          const blocks =
            name === 'sending' &&
            overload !== undefined &&
            arrival.dbm > overload &&
            !isMuted(trial, reach, receiver.unit);
          if (!burns && !blocks) continue;
          const way = [
            ...new Set(
              wayTo(field.best, receiver.port)
                .ports.slice(1, -1)
                .map((p) => unitName(station, rfPortRef(circuit, p).unit)),
            ),
          ];
          report({
            message: burns ? 'damage' : 'overload',
            severity: burns ? 'danger' : 'doubt',
            at: [rfPortRef(circuit, receiver.port)],
            values: {
              level: arrival.dbm,
              watts: 10 ** ((arrival.dbm - 30) / 10),
              transmitter: unitName(station, source.unit),
              port: rfPortName(station, circuit, receiver.port),
              limit: burns ? damage : (overload ?? damage),
              moment: momentWords[name],
              way: way.join(', ') || 'the cable',
              assumed: receiver.spec.damageDbm === undefined ? ' (assumed)' : '',
            },
            moment: name,
            weight: arrival.dbm,
            // A muted receiver burns like an open one.
            ...(burns && {
              follows: ['rf/changeover-reversed', 'rf/no-changeover', 'drawing/fits-but-should-not'],
            }),
            touches: touchesOnWay(circuit, field, receiver.port),
          });
        }
      }
    },
  },
});
