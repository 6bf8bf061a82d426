import { kindOf } from '../../station/parts.ts';
import { hasTypicalFigures } from '../../station/schema/unit-kind.ts';
import { defineRule } from '../rule.ts';

export const typicalFigures = defineRule({
  id: 'drawing/typical-figures',
  severity: 'note',
  title: 'Typical figures',
  compares: 'which units still carry the shelf’s figures instead of their own',
  why: 'What is worked out from a typical figure is typical too: good for a plan, not for cutting wire.',
  advice: 'Enter the figures from the maker’s papers or from a measurement, or confirm that these are right.',
  source: 'the catalogue marks its figures as typical',
  follows: [],
  messages: {
    one: '{units} still carries the shelf’s typical figures.',
    several: '{count} units still carry the shelf’s typical figures: {units}.',
  },
  looksAt: {
    station({ station }, report) {
      const typical = station.units.filter(
        (u) => !u.confirmed && !u.overrides && hasTypicalFigures(kindOf(station, u)),
      );
      const [first, ...others] = typical.map((u) => ({ unit: u.id }));
      if (!first) return;
      const values = { count: typical.length, units: typical.map((u) => u.name).join(', ') };
      report({ message: typical.length === 1 ? 'one' : 'several', severity: 'note', at: [first, ...others], values });
    },
  },
});
