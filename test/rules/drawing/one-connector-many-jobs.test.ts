import { oneConnectorManyJobs } from '../../../core/rules/drawing/one-connector-many-jobs.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A unit with a barrel jack: volts that it works with and stands, and which way round. */
const unit = (minV: number, absMaxV: number, plus = 'centre') => ({
  made: made({ power: ['dc', 'barrel-21-jack'] }, [
    {
      ...load(`power.${plus}`, `power.${plus === 'centre' ? 'shell' : 'centre'}`, 0.1),
      minV,
      maxV: absMaxV,
      absMaxV,
    },
  ]),
});

testRule(oneConnectorManyJobs, {
  silent: [
    { name: 'two units for 12 V', station: drawStation({ units: { a: unit(11, 15), b: unit(10, 16) } }) },
    { name: 'one unit', station: drawStation({ units: { a: unit(4.5, 5.5) } }) },
  ],
  reported: [
    {
      name: '5 V, 12 V and one with its centre minus',
      station: drawStation({ units: { a: unit(4.5, 5.5), b: unit(11, 15), c: unit(11, 15, 'shell') } }),
      message: 'many',
      severity: 'note',
      at: { unit: 'a' },
      // The 12 V plug on the 5 V unit; and each of the two others with the reversed one, both ways: five swaps.
      values: { swaps: '5 swaps' },
    },
  ],
});
