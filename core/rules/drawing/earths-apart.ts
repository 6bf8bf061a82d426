import { metalGroups } from '../../circuit/metal-groups.ts';
import { isPutAside, kindOf } from '../../station/parts.ts';
import type { Unit } from '../../station/schema/schema.ts';
import { defineRule } from '../rule.ts';

export const earthsApart = defineRule({
  id: 'drawing/earths-apart',
  severity: 'doubt',
  title: 'Earth electrodes that nothing bonds',
  compares: 'every earth electrode of the station, whether an earth wire joins it to the others',
  why: 'In a storm the soil between two rods differs by thousands of volts, and the current takes the way through the station.',
  advice:
    'Bond every rod, the mast’s and the mains entry’s earth into one system outside the house; a licensed electrician knows the local code.',
  source: 'common practice; local electrical codes ask for one bonded system',
  follows: [],
  messages: { apart: '{one} and {two} are both in the soil, and no earth wire joins them.' },
  looksAt: {
    // Which two rods are compared depends on all of them.
    hookup(hookup, { station, trial: { circuit } }, report) {
      const rods = station.units.filter((unit) => kindOf(station, unit).electrode);
      const [first, ...others] = rods.sort((a, b) => a.id.localeCompare(b.id));
      if (!first || others.length === 0) return;
      const groupOf = metalGroups(circuit);
      const group = (unit: Unit) => {
        const port = kindOf(station, unit).ports.find((p) => p.class === 'earth');
        return groupOf(circuit.nodeOf.get(`${unit.id}.${port?.id}.earth`) ?? -1);
      };
      for (const other of others) {
        if (group(first) === group(other) || isPutAside(station, hookup, other.id)) continue;
        report({
          message: 'apart',
          severity: 'doubt',
          at: [{ unit: other.id }, { unit: first.id }],
          values: { one: first.name, two: other.name },
        });
      }
    },
  },
});
