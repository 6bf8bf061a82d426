import { metalGroups } from '../../circuit/metal-groups.ts';
import { isPutAside, kindOf, unitName, unitOf } from '../../station/parts.ts';
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
    station({ station, hookups }, report) {
      const rods = station.units.filter((unit) => kindOf(station, unit).electrode);
      for (const { hookup, trial } of hookups) {
        const groupOf = metalGroups(trial.circuit);
        const node = (unit: string) => {
          const port = kindOf(station, unitOf(station, unit)).ports.find((p) => p.class === 'earth');
          return trial.circuit.nodeOf.get(`${unit}.${port?.id}.earth`) ?? -1;
        };
        const [first, ...others] = [...rods].sort((a, b) => a.id.localeCompare(b.id));
        if (!first) return;
        for (const other of others) {
          if (groupOf(node(first.id)) === groupOf(node(other.id)) || isPutAside(station, hookup, other.id)) continue;
          report({
            message: 'apart',
            severity: 'doubt',
            at: [{ unit: other.id }, { unit: first.id }],
            values: { one: unitName(station, first.id), two: unitName(station, other.id) },
            hookup: hookup.id,
          });
        }
      }
    },
  },
});
