import { supplyRunaway } from '../../../core/rules/power/supply-runaway.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A 13.8 V supply whose regulator can fail to so many volts, and a radio that stands 16 V. */
const linear = (faultVolts?: number) =>
  drawStation({
    units: {
      supply: {
        made: made({ out: ['dc', 'binding-posts'] }, [
          {
            id: 'regulated',
            type: 'supply',
            plus: 'out.plus',
            minus: 'out.minus',
            volts: 13.8,
            ...(faultVolts !== undefined && { faultVolts }),
            sourceOhms: 0.02,
            amps: 20,
            peakAmps: 25,
            beyond: 'limits',
          },
        ]),
      },
      radio: { made: made({ power: ['dc', 'binding-posts'] }, [load('power.plus', 'power.minus', 2)]) },
    },
    cables: ['supply.out > radio.power'],
  });

testRule(supplyRunaway, {
  silent: [
    { name: 'a supply with over-voltage protection', station: linear() },
    { name: 'a raw voltage that the radio stands', station: linear(15.5) },
  ],
  reported: [
    {
      // Linear 13.8 V supplies have some 20 V before the pass transistor: common practice.
      name: '20 V before the pass transistor',
      station: linear(20),
      message: 'raw',
      severity: 'doubt',
      at: { unit: 'supply' },
      values: { volts: 20, limit: 16 },
    },
  ],
});
