import { cablesAt, portName } from '../../station/parts.ts';
import type { Cable } from '../../station/schema/schema.ts';
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
    port({ unit, port }, { station, hookup }, report) {
      if (port.needed === 'optional' || cablesAt(station, hookup, unit.id, port.id).length > 0) return;
      // A unit that is in use in another hook-up only is put aside in this one.
      const isUsed = ({ a, b }: Cable) => a.unit === unit.id || b.unit === unit.id;
      if (cablesAt(station, hookup, unit.id).length === 0 && station.cables.some(isUsed)) return;
      const ref = { unit: unit.id, port: port.id };
      const when = port.needed === 'toSend' ? ' to send' : '';
      const values = { port: portName(station, ref), unit: unit.name, when };
      report({ message: 'open', severity: 'fault', at: [ref], values });
    },
  },
});
