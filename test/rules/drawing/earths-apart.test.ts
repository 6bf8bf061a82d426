import { earthsApart } from '../../../core/rules/drawing/earths-apart.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const rod = { made: made({ clamp: ['earth', 'earth-stud'] }, [], { electrode: true }) };
const rods = (cables: string[]) => drawStation({ units: { mast: rod, house: rod, bar: 'earth-bar' }, cables });

// Local codes ask for one bonded system: common practice.
testRule(earthsApart, {
  silent: [
    { name: 'one wire between them', station: rods(['mast.clamp > house.clamp']) },
    { name: 'one electrode', station: drawStation({ units: { mast: rod } }) },
  ],
  reported: [
    {
      name: 'two rods and nothing between',
      station: rods([]),
      message: 'apart',
      severity: 'doubt',
      at: { unit: 'mast' },
    },
  ],
});
