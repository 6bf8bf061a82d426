import { voltsBetween } from '../../keydown/feel.ts';
import { cablesIn, kindOf, portName } from '../../station/parts.ts';
import { type Instant, instantsOf } from '../look.ts';
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
  check({ station, hookups }, report) {
    for (const { hookup, trial } of hookups) {
      const first: Pick<Instant, 'name' | 'reach'> = { name: 'receive', reach: trial.atFirst };
      const instants = [first, ...instantsOf(trial)];
      const plugged = new Set(
        cablesIn(station, hookup).flatMap((c) => [`${c.a.unit}.${c.a.port}`, `${c.b.unit}.${c.b.port}`]),
      );
      for (const unit of station.units) {
        for (const port of kindOf(station, unit).ports) {
          if (port.class !== 'rf' || !plugged.has(`${unit.id}.${port.id}`)) continue;
          const centre = trial.circuit.nodeOf.get(`${unit.id}.${port.id}.centre`);
          const shell = trial.circuit.nodeOf.get(`${unit.id}.${port.id}.shell`);
          if (centre === undefined || shell === undefined) continue;
          const limit = port.limits?.centre?.maxV ?? 0;
          for (const { name, reach } of instants) {
            const volts = voltsBetween(reach.dc, centre, shell);
            if (volts === null || Math.abs(volts) <= Math.max(limit, assumedVolts)) continue;
            const ref = { unit: unit.id, port: port.id };
            const values = { port: portName(station, ref), volts, limit };
            report({
              message: 'dc',
              severity: 'danger',
              at: [{ ...ref, contact: 'centre' }],
              values,
              hookup: hookup.id,
              moment: name,
              weight: Math.abs(volts),
            });
          }
        }
      }
    }
  },
});
