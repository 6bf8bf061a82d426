import { voltsBetween } from '../../keydown/feel.ts';
import { cablesAt, portName } from '../../station/parts.ts';
import { instantsBetween } from '../../trial/instants.ts';
import { defineRule } from '../rule.ts';

/** What an RF contact without a stated limit stands: nothing to speak of. */
const assumedVolts = 0.5;

export const dcOnRf = defineRule({
  id: 'rf/dc-on-rf',
  severity: 'danger',
  title: 'DC on an RF contact',
  compares: 'the DC voltage between centre and shell of every plugged RF port against what it is declared to stand',
  why: 'Most RF inputs and terminations are a short or a small coil for DC: the supply burns them out, or they short the supply.',
  advice: 'Take the DC off that line, or use units that pass or block it on purpose.',
  source: 'the port’s own limit; without one, no DC is expected (assumed)',
  follows: ['drawing/fits-but-should-not', 'power/reversed-polarity'],
  messages: { dc: '{port} has {volts V} DC on its centre contact; it stands {limit V}.' },
  looksAt: {
    port({ unit, port }, { station, hookup, trial }, report) {
      if (port.class !== 'rf' || cablesAt(station, hookup, unit.id, port.id).length === 0) return;
      const centre = trial.circuit.nodeOf.get(`${unit.id}.${port.id}.centre`);
      const shell = trial.circuit.nodeOf.get(`${unit.id}.${port.id}.shell`);
      if (centre === undefined || shell === undefined) return;
      const first = { name: 'receive', reach: trial.atFirst } as const;
      const limit = port.limits?.centre?.maxV ?? 0;
      for (const { name, reach } of [first, ...instantsBetween(trial, centre, shell)]) {
        const volts = voltsBetween(reach.dc, centre, shell);
        if (volts === null || Math.abs(volts) <= Math.max(limit, assumedVolts)) continue;
        const ref = { unit: unit.id, port: port.id };
        const values = { port: portName(station, ref), volts, limit };
        report({
          message: 'dc',
          severity: 'danger',
          at: [{ ...ref, contact: 'centre' }],
          values,
          moment: name,
          weight: Math.abs(volts),
          touches: cablesAt(station, hookup, unit.id, port.id).flatMap((c) => [`unit:${c.a.unit}`, `unit:${c.b.unit}`]),
        });
      }
    },
  },
});
