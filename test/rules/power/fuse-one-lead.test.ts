import { fuseOneLead } from '../../../core/rules/power/fuse-one-lead.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const battery = made(
  { out: ['dc', 'stud-pair'] },
  [
    {
      id: 'cells',
      type: 'battery',
      plus: 'out.plus',
      minus: 'out.minus',
      chemistry: 'agm',
      ampHours: 80,
      charge: 1,
      sourceOhms: 0.006,
      maxVolts: 14.7,
      cutOffV: 10.5,
      amps: 80,
      peakAmps: 600,
      beyond: 'sags',
    },
  ],
  { isolated: 'all' },
);
/** A box with a fuse in each lead. */
const both = made(
  { in: ['dc', 'two-pole-30'], out: ['dc', 'two-pole-30'] },
  [
    { id: 'plus', type: 'conductor', from: 'in.plus', to: 'out.plus', ohms: 0, fuseAmps: 25 },
    { id: 'minus', type: 'conductor', from: 'in.minus', to: 'out.minus', ohms: 0, fuseAmps: 25 },
  ],
  { isolated: 'all' },
);
const fuse = { amps: 25, family: 'blade', atM: 0.1 } as const;

testRule(fuseOneLead, {
  silent: [
    {
      name: 'a supply at a desk, fused in plus',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w' },
        cables: [['supply.out > rig.power', { fuse }]],
      }),
    },
    {
      name: 'a battery with a fuse in each lead',
      station: drawStation({
        units: { battery: { made: battery }, box: { made: both }, rig: 'transceiver-100w' },
        cables: ['battery.out > box.in', 'box.out > rig.power'],
      }),
    },
    {
      name: 'no fuse at all is another rule’s business',
      station: drawStation({
        units: { battery: { made: battery }, rig: 'transceiver-100w' },
        cables: ['battery.out > rig.power'],
      }),
    },
  ],
  reported: [
    {
      name: 'a transceiver on a battery, fused in plus',
      station: drawStation({
        units: { battery: { made: battery }, rig: 'transceiver-100w' },
        cables: [['battery.out > rig.power', { fuse }]],
      }),
      message: 'one',
      severity: 'note',
      at: { unit: 'rig', port: 'power' },
      values: { unit: 'rig', battery: 'battery' },
    },
  ],
});
