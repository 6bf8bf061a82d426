import { unregulated } from '../../../core/rules/power/unregulated.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A transformer, a bridge and a capacitor: 17 V with nothing on it, 12 V at half an ampere. */
const adapter = (open: number) =>
  made(
    { out: ['dc', 'two-pole-30'] },
    [
      {
        id: 'output',
        type: 'supply',
        plus: 'out.plus',
        minus: 'out.minus',
        volts: open,
        sourceOhms: (open - 12) / 0.5,
        amps: 0.5,
        peakAmps: 2,
        beyond: 'sags',
      },
    ],
    { isolated: 'all' },
  );
const unit = made({ power: ['dc', 'two-pole-30'] }, [load('power.plus', 'power.minus', 0.4)]);
const fed = (open: number) =>
  drawStation({
    units: { adapter: { made: adapter(open) }, unit: { made: unit } },
    cables: ['adapter.out > unit.power'],
  });

testRule(unregulated, {
  silent: [
    { name: 'an unregulated adapter that stays below 16 V with nothing on it', station: fed(15.9) },
    {
      name: 'a regulated supply',
      station: drawStation({
        units: { supply: 'bench-supply', unit: { made: unit } },
        cables: ['supply.out > unit.power'],
      }),
    },
  ],
  reported: [
    {
      name: '17 V when the unit idles, 13 V now; it stands 16 V',
      station: fed(17),
      message: 'rises',
      severity: 'doubt',
      at: { unit: 'unit', port: 'power' },
      // 17 V less 0.4 A in 10 Ω.
      values: { open: 17, volts: 13, limit: 16 },
      within: 0.005,
    },
  ],
});
