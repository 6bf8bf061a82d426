import { earth } from '../../../core/rules/drawing/earth.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const box = { made: made({ ground: ['earth', 'earth-stud'] }, []) };

testRule(earth, {
  silent: [
    {
      name: 'a wire between the two',
      station: drawStation({ units: { a: box, b: box }, cables: ['a.ground > b.ground'] }),
    },
    { name: 'no earth terminal', station: drawStation({ units: { supply: 'plug-in-adapter' } }) },
  ],
  reported: [
    {
      name: 'two boxes with bare terminals',
      station: drawStation({ units: { a: box, b: box } }),
      message: 'open',
      severity: 'note',
      at: { unit: 'a' },
      values: { units: 'a, b', have: 'have' },
    },
  ],
});
