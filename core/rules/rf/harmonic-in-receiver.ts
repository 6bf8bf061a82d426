import type { RfLoad } from '../../circuit/circuit.ts';
import { formatDecimals } from '../../quantity/format.ts';
import { kindOf, unitName, unitOf } from '../../station/parts.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { isMuted } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

const orders = [2, 3, 4, 5];
/** Weaker than this a receiver’s own noise covers it. */
const heardDbm = -110;

export const harmonicInReceiver = defineRule({
  id: 'rf/harmonic-in-receiver',
  severity: 'doubt',
  title: 'A harmonic falls into a receiver that is listening',
  compares:
    'multiples of the plan’s frequency against the range of each receiver that is open in sending, and their level there',
  why: 'It is a carrier in the middle of the band, and no setting of the receiver takes it out.',
  advice:
    'A low-pass filter behind the transmitter and a band-pass filter before the receiver’s preamplifier; or antennas further apart.',
  source: 'the transmitter’s own harmonics and the ways found for its carrier; −110 dBm of noise is common practice',
  follows: ['rf/transmit-into-receiver', 'keying/no-mute'],
  messages: {
    heard:
      'Harmonic {order} of {transmitter} at {frequency} MHz comes to {receiver} with {level dBm} while it listens.',
  },
  looksAt: {
    region({ number, receivers }, { station, trial }, report) {
      const { frequencyHz } = station.plan;
      const tuned = receivers.flatMap((receiver) => {
        const ref = rfPortRef(trial.circuit, receiver.port);
        const order = orders.find((n) => isHeardAt(station, receiver, ref, n * frequencyHz));
        return order === undefined ? [] : [{ receiver, ref, order }];
      });
      for (const { name, reach } of tuned.length > 0 ? instantsOfRegion(trial, number) : []) {
        if (name !== 'sending') continue;
        for (const { receiver, ref, order } of tuned) {
          const level = reach.rf.levelAt(receiver.port);
          const source = level && trial.circuit.rf.sources[level.field.source];
          const dbc = source?.spec.harmonicsDbc;
          if (!source || dbc === undefined || source.unit === receiver.unit) continue;
          if (isMuted(trial, reach, receiver.unit) || level.dbm + dbc < heardDbm) continue;
          report({
            message: 'heard',
            severity: 'doubt',
            at: [ref],
            values: {
              order: String(order),
              transmitter: unitName(station, source.unit),
              frequency: formatDecimals((order * frequencyHz) / 1e6, 3),
              receiver: unitName(station, receiver.unit),
              level: level.dbm + dbc,
            },
            moment: name,
            weight: level.dbm + dbc,
          });
        }
      }
    },
  },
});

/** Whether a frequency is in the range of a receiver's port, or of the receiver; one without a range hears none. */
function isHeardAt(station: Station, { spec }: RfLoad, ref: PortRef, hertz: number): boolean {
  const port = kindOf(station, unitOf(station, ref.unit)).ports.find((p) => p.id === ref.port);
  const [minHz, maxHz] = [port?.minHz ?? spec.minHz, port?.maxHz ?? spec.maxHz];
  return minHz !== undefined && maxHz !== undefined && hertz >= minHz && hertz <= maxHz;
}
