import { dummyLoadHookup } from '../../fixes/hookups.ts';
import { wattsFromDbm } from '../../quantity/decibel.ts';
import { unitName } from '../../station/parts.ts';
import type { Hookup } from '../../station/schema/schema.ts';
import { instantsOfRegion } from '../../trial/instants.ts';
import { regionsOf } from '../../trial/rf/regions.ts';
import { defineRule, fixed } from '../rule.ts';

export const noDummyLoadHookup = defineRule({
  id: 'drawing/no-dummy-load-hookup',
  severity: 'note',
  title: 'No hook-up for a test without the antenna',
  compares: 'whether any hook-up leads each transmitter into a dummy load',
  why: 'The first power-up and every repair want a load that does not radiate: nobody is disturbed, and the transmitter meets the ohms that it is made for.',
  advice: 'Add a hook-up “On the dummy load” in which the line to the antenna goes to a dummy load.',
  source: 'common practice',
  follows: [],
  messages: { none: 'No hook-up tests {transmitter} on a dummy load.' },
  looksAt: {
    station({ station, hookups }, report) {
      const tested = new Set<string>();
      const sends = new Map<string, { antenna: string; watts: number; hookup: Hookup }>();
      const transmitters = new Set<string>();
      for (const { hookup, trial } of hookups) {
        for (const { number, sources, loads } of regionsOf(trial)) {
          for (const source of sources) transmitters.add(source.unit);
          for (const field of instantsOfRegion(trial, number).flatMap(({ reach }) => reach.rf.at(number).fields)) {
            const isTested = loads.some((l) => l.spec.role === 'termination' && field.selected.has(l.port));
            const antenna = loads.find((l) => l.spec.role === 'antenna' && field.selected.has(l.port));
            const source = trial.circuit.rf.sources[field.source];
            if (antenna && source)
              sends.set(source.unit, { antenna: antenna.unit, watts: wattsFromDbm(source.spec.dbm), hookup });
            if (isTested) tested.add(trial.circuit.rf.sources[field.source]?.unit ?? '');
          }
        }
      }
      for (const unit of transmitters) {
        if (tested.has(unit)) continue;
        const way = sends.get(unit);
        report({
          message: 'none',
          severity: 'note',
          at: [{ unit }],
          values: { transmitter: unitName(station, unit) },
          ...fixed(way && dummyLoadHookup(station, way.hookup, way.antenna, way.watts)),
        });
      }
    },
  },
});
