import { chargeOverloads } from '../../../core/rules/power/charge-overloads.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A supply of 30 A that floats a battery, and a radio that takes 22 A. */
const floated = (chargeAmps?: number, radio = 22) => {
  const station = drawStation({
    units: {
      supply: {
        made: made({ out: ['dc', 'stud-pair'] }, [
          {
            id: 'regulated',
            type: 'supply',
            plus: 'out.plus',
            minus: 'out.minus',
            volts: 13.8,
            sourceOhms: 0.01,
            amps: 30,
            peakAmps: 35,
            beyond: 'limits',
          },
        ]),
      },
      battery: {
        made: made(
          { out: ['dc', 'stud-pair'] },
          [
            {
              id: 'cells',
              type: 'battery',
              plus: 'out.plus',
              minus: 'out.minus',
              chemistry: 'leadAcid',
              ampHours: 100,
              charge: 1,
              sourceOhms: 0.01,
              maxVolts: 14.4,
              cutOffV: 10.5,
              amps: 100,
              peakAmps: 500,
              beyond: 'sags',
              ...(chargeAmps !== undefined && { chargeAmps }),
            },
          ],
          { isolated: 'all' },
        ),
      },
      radio: { made: made({ power: ['dc', 'stud-pair'] }, [load('power.plus', 'power.minus', radio)]) },
    },
    cables: [
      ['supply.out > battery.out', { kind: 'lead-awg-10', fuse: { amps: 30, family: 'blade', atM: 0.3 } }],
      ['supply.out > radio.power', { kind: 'lead-awg-10', fuse: { amps: 25, family: 'blade', atM: 0.1 } }],
    ],
  });
  return station;
};

testRule(chargeOverloads, {
  silent: [
    { name: 'a charger that limits itself to 5 A', station: floated(5) },
    { name: 'a battery that states no charge current', station: floated() },
  ],
  reported: [
    {
      // A fifth of 100 Ah is the usual limit (common practice): 22 A and 20 A are 42 A.
      name: '20 A into the battery beside 22 A of radio',
      station: floated(20),
      message: 'both',
      severity: 'doubt',
      at: { unit: 'supply' },
      values: { demand: 42, load: 22, charge: 20, rating: 30 },
      within: 0.01,
    },
  ],
});
