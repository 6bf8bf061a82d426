import { cablesAt, portOf, portOfRef, unitName } from '../../station/parts.ts';
import { instantsOfPart } from '../../trial/instants.ts';
import { isFeed, loadVolts, suppliesOf, unitOfPart, works } from '../../trial/parts.ts';
import { defineRule } from '../rule.ts';

export const notPowered = defineRule({
  id: 'power/not-powered',
  severity: 'fault',
  title: 'A unit gets no power',
  compares: 'the voltage at each load that is plugged in against what it needs to be on, in every moment',
  why: 'It stays dead; and what it should switch or protect stays as it is without power.',
  advice: 'Follow its lead back to the supply and find where the voltage ends.',
  source: 'the unit’s drop-out voltage; half its least working voltage where it states none (assumed)',
  follows: [
    'power/reversed-polarity',
    'power/short-circuit',
    'power/return-missing',
    'rf/dc-on-rf',
    'power/supply-overloaded',
    'power/fuse-will-open',
    'drawing/does-not-mate',
    'drawing/fits-but-should-not',
    'drawing/port-needed-open',
  ],
  messages: { dead: '{unit} gets {volts V} and stays off; it needs {minV V}.' },
  looksAt: {
    load({ index, part }, { station, hookup, trial }, report) {
      const [unit, port] = [unitOfPart(part), portOfRef(part.spec.plus)];
      const cables = cablesAt(station, hookup, unit, port);
      // With nothing plugged in the open port is the finding, and an optional feed may stay open.
      if (cables.length === 0 || !isFeed(part) || portOf(station, { unit, port }).port.needed === 'optional') return;
      const volts = Math.max(...instantsOfPart(trial, index).map(({ reach }) => loadVolts(reach, part)));
      if (works(part, volts)) return;
      const stuck = suppliesOf(trial.circuit).filter((s) => trial.receive.dc.modeOf(s.index) !== 'regulating');
      report({
        message: 'dead',
        severity: 'fault',
        at: [{ unit, port }],
        values: { unit: unitName(station, unit), volts: Math.max(0, volts), minV: part.spec.minV },
        touches: [
          ...cables.flatMap((c) => [`cable:${c.id}`, `unit:${c.a.unit}`, `unit:${c.b.unit}`]),
          ...stuck.map((s) => `supply:${unitOfPart(s.part)}`),
        ],
      });
    },
  },
});
