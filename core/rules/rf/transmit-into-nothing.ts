import { isOpenGate } from '../../circuit/circuit.ts';
import { wattsFromDbm } from '../../quantity/decibel.ts';
import type { RfArrival, RfArrivals } from '../../rf/rf-solution.ts';
import { isPutAside, unitName } from '../../station/parts.ts';
import { rfPortRef } from '../../trial/contact-at.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { rfPortName } from '../../trial/names.ts';
import { fieldOf, touchesOnWay } from '../../trial/rf/rf-ways.ts';
import { defineRule } from '../rule.ts';

export const transmitIntoNothing = defineRule({
  id: 'rf/transmit-into-nothing',
  severity: 'danger',
  title: 'The transmitter sends into nothing',
  compares: 'where the selected path from each sending transmitter ends: an antenna, a load, or neither',
  why: 'With nothing to take the power it comes back, and the output transistors pay for it.',
  advice: 'Complete the way to the antenna or to the dummy load before the key is touched.',
  source: 'common practice',
  follows: [
    'rf/changeover-reversed',
    'drawing/port-needed-open',
    'drawing/does-not-mate',
    'drawing/fits-but-should-not',
    'power/not-powered',
    'power/reversed-polarity',
  ],
  messages: {
    open: '{transmitter} sends {watts W}, and its way ends at {end}, where nothing takes it.',
    receiver: '{transmitter} sends {watts W}, and its way ends in {end}, which is a receiver.',
  },
  looksAt: {
    region({ number, sources, loads }, { station, hookup, trial }, report) {
      const { circuit } = trial;
      const sendings = instantsOfRegion(trial, number).filter(({ name }) => name === 'sending');
      for (const { reach, source } of sendings.flatMap(({ reach }) => sources.map((source) => ({ reach, source })))) {
        const field = fieldOf(trial, reach, source);
        if (!field || isPutAside(station, hookup, source.unit)) continue;
        const ends = loads.filter((l) => field.selected.has(l.port) && isOpenGate(l.gate, reach.on));
        if (ends.some((l) => l.spec.role !== 'receiver')) continue;
        const end = ends[0]?.port ?? farthest(field.selected) ?? source.port;
        const ports = [...field.selected.keys()];
        report({
          message: ends.length > 0 ? 'receiver' : 'open',
          severity: 'danger',
          at: [rfPortRef(circuit, source.port), rfPortRef(circuit, end)],
          values: {
            transmitter: unitName(station, source.unit),
            watts: wattsFromDbm(source.spec.dbm),
            end: rfPortName(station, circuit, end),
          },
          moment: 'sending',
          touches: ports.flatMap((port) => touchesOnWay(circuit, field, port)),
        });
      }
    },
  },
});

/** The port at which the level is least: the far end of the way. */
function farthest(arrivals: RfArrivals): number | null {
  let far: readonly [number, RfArrival] | null = null;
  for (const arrival of arrivals) if (far === null || arrival[1].dbm <= far[1].dbm) far = arrival;
  return far?.[0] ?? null;
}
