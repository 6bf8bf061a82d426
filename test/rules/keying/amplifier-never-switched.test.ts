import { amplifierNeverSwitched } from '../../../core/rules/keying/amplifier-never-switched.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const units = {
  supply: 'switch-mode-supply',
  tx: 'cw-transmitter-3w',
  amplifier: 'amplifier-40w',
  key: 'straight-key',
  second: 'straight-key',
  load: 'dummy-load-100w',
};
const cables = [
  'supply.out > tx.power',
  'supply.out > amplifier.power',
  'key.out > tx.key',
  'tx.antenna > amplifier.input',
  'amplifier.output > load.input',
];

testRule(amplifierNeverSwitched, {
  silent: [
    {
      name: 'keyed by the transceiver that drives it',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          rig: { kind: 'transceiver-100w', overrides: { 'output.dbm': 34 } },
          amplifier: 'amplifier-40w',
          load: 'dummy-load-100w',
        },
        cables: [
          'supply.out > rig.power',
          'supply.out > amplifier.power',
          'rig.amplifier > amplifier.key',
          'rig.antenna > amplifier.input',
          'amplifier.output > load.input',
        ],
      }),
    },
    {
      name: 'switched off on purpose: no power, the transmitter sends past it',
      station: drawStation({ units, cables: cables.filter((c) => c !== 'supply.out > amplifier.power') }),
    },
  ],
  reported: [
    {
      name: 'nothing in its key jack',
      station: drawStation({ units, cables }),
      message: 'open',
      severity: 'doubt',
      at: { unit: 'amplifier', port: 'key' },
      values: { transmitter: 'tx', line: 'amplifier · key' },
    },
    {
      name: 'the changeover’s mute contact on its key jack never closes, as the changeover itself is not keyed',
      station: drawStation({
        units: { ...units, over: 'changeover-by-line' },
        cables: [...cables, 'supply.out > over.power', 'over.mute > amplifier.key'],
      }),
      message: 'idle',
      severity: 'fault',
      at: { unit: 'amplifier', port: 'key' },
    },
  ],
});
