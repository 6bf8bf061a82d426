import { cablesIn, kindOf, portName } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

export const portNeededOpen = defineRule({
  id: 'drawing/port-needed-open',
  severity: 'fault',
  title: 'A port that has to be connected is open',
  compares: 'ports that their unit needs with what is plugged in, hook-up by hook-up',
  why: 'The unit can’t do its work without it.',
  advice: 'Lay the cable that belongs there.',
  source: 'the unit kind',
  follows: [],
  messages: { open: 'Nothing is plugged into {port}, which {unit} needs{when}.' },
  looksAt: {
    station({ station, hookups }, report) {
      const everPlugged = new Set(station.cables.flatMap((c) => [c.a.unit, c.b.unit]));
      for (const { hookup } of hookups) {
        const cables = cablesIn(station, hookup);
        const plugged = new Set(cables.flatMap((c) => [`${c.a.unit}.${c.a.port}`, `${c.b.unit}.${c.b.port}`]));
        const taking = new Set(cables.flatMap((c) => [c.a.unit, c.b.unit]));
        for (const unit of station.units) {
          // A unit that is in use in another hook-up only is put aside in this one.
          if (!taking.has(unit.id) && everPlugged.has(unit.id)) continue;
          for (const port of kindOf(station, unit).ports) {
            if (port.needed === 'optional' || plugged.has(`${unit.id}.${port.id}`)) continue;
            const ref = { unit: unit.id, port: port.id };
            const values = {
              port: portName(station, ref),
              unit: unit.name,
              when: port.needed === 'toSend' ? ' to send' : '',
            };
            report({ message: 'open', severity: 'fault', at: [ref], values, hookup: hookup.id });
          }
        }
      }
    },
  },
});
