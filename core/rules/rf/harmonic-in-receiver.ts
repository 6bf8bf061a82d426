import { formatDecimals } from '../../quantity/format.ts';
import { kindOf, unitName, unitOf } from '../../station/parts.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { rfPortRef } from '../../trial/names.ts';
import { regionsOf } from '../../trial/regions.ts';
import { isMuted } from '../../trial/rf-ways.ts';
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
    station({ station, hookups }, report) {
      const { frequencyHz } = station.plan;
      for (const { hookup, trial } of hookups) {
        for (const { number, receivers } of regionsOf(trial)) {
          for (const { name, reach } of instantsOfRegion(trial, number)) {
            if (name !== 'sending') continue;
            for (const receiver of receivers) {
              const ref = rfPortRef(trial.circuit, receiver.port);
              const port = kindOf(station, unitOf(station, ref.unit)).ports.find((p) => p.id === ref.port);
              const { minHz, maxHz } = {
                minHz: port?.minHz ?? receiver.spec.minHz,
                maxHz: port?.maxHz ?? receiver.spec.maxHz,
              };
              const order = orders.find(
                (n) =>
                  minHz !== undefined && maxHz !== undefined && n * frequencyHz >= minHz && n * frequencyHz <= maxHz,
              );
              const level = reach.rf.levelAt(receiver.port);
              const source = level && trial.circuit.rf.sources[level.field.source];
              const dbc = source?.spec.harmonicsDbc;
              if (order === undefined || !source || dbc === undefined || source.unit === receiver.unit) continue;
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
                hookup: hookup.id,
                moment: name,
                weight: level.dbm + dbc,
              });
            }
          }
        }
      }
    },
  },
});
