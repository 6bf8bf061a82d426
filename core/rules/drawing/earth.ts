import { plural } from '../../quantity/counted.ts';
import { cablesAt, kindOf } from '../../station/parts.ts';
import { defineRule } from '../rule.ts';

export const earth = defineRule({
  id: 'drawing/earth',
  severity: 'note',
  title: 'Earth terminals with nothing on them',
  compares: 'every unit that has an earth terminal, whether an earth wire is on it',
  why: 'A metal case that a fault makes live stays live without an earth, and what a storm brings in has nowhere to go.',
  advice:
    'Bring each terminal by a short, thick wire to one earth bar. The mains earth of a plug stays where it is; local codes decide.',
  source: 'common practice; local electrical codes',
  judgesDrawing: true,
  follows: [],
  messages: { open: '{units} {have} an earth terminal and no earth wire.' },
  looksAt: {
    station({ station, hookups }, report) {
      const bare = station.units.filter((unit) => {
        const ports = kindOf(station, unit).ports.filter((p) => p.class === 'earth');
        const plugged = ports.some((p) =>
          hookups.some(({ hookup }) => cablesAt(station, hookup, unit.id, p.id).length > 0),
        );
        return ports.length > 0 && !plugged;
      });
      const [first, ...others] = bare;
      if (!first) return;
      report({
        message: 'open',
        severity: 'note',
        at: [{ unit: first.id }, ...others.map(({ id }) => ({ unit: id }))],
        values: { units: bare.map((u) => u.name).join(', '), have: plural(bare.length, 'has', 'have') },
      });
    },
  },
});
