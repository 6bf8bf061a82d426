import { wattsFromDbm } from '../../quantity/decibel.ts';
import { unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion, momentWords } from '../../trial/instants.ts';
import { rfPortName } from '../../trial/names.ts';
import { touchesOnWay } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

/** A tenth of a watt into an output mixes there; a watt can break it. */
const mixesDbm = 20;
const breaksDbm = 30;

export const transmitIntoTransmitter = defineRule({
  id: 'rf/transmit-into-transmitter',
  severity: 'danger',
  title: 'One transmitter sends into another',
  compares: 'the level of each transmitter at the output of every other one that it can reach',
  why: 'The output stage takes power that it did not make: transistors break down, and the two mix into signals on other frequencies.',
  advice:
    'A switch of more isolation, filters for the two bands, or an interlock so that only one is ever on the line.',
  source: 'common practice: a watt',
  follows: ['rf/changeover-reversed', 'drawing/fits-but-should-not'],
  messages: {
    reaches: '{level dBm} ({watts W}) from {transmitter} reaches {port} {moment}, where {other} sends from.',
  },
  looksAt: {
    region({ number, sources }, { station, trial }, report) {
      const { circuit } = trial;
      if (sources.length < 2) return;
      for (const { name, reach } of instantsOfRegion(trial, number)) {
        for (const field of reach.rf.at(number).fields) {
          const from = circuit.rf.sources[field.source];
          for (const other of sources) {
            const arrival = field.best.get(other.port);
            if (!from || from.unit === other.unit || !arrival || arrival.dbm <= mixesDbm) continue;
            report({
              message: 'reaches',
              severity: arrival.dbm > breaksDbm ? 'danger' : 'doubt',
              at: [rfPortRef(circuit, other.port)],
              values: {
                level: arrival.dbm,
                watts: wattsFromDbm(arrival.dbm),
                transmitter: unitName(station, from.unit),
                other: unitName(station, other.unit),
                port: rfPortName(station, circuit, other.port),
                moment: momentWords[name],
              },
              moment: name,
              weight: arrival.dbm,
              touches: touchesOnWay(circuit, field, other.port),
            });
          }
        }
      }
    },
  },
});
