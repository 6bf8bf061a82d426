import { noDummyLoadHookup } from '../../../core/rules/drawing/no-dummy-load-hookup.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const units = {
  supply: 'bench-supply',
  tx: 'cw-transmitter-3w',
  key: 'straight-key',
  wire: 'wire-antenna',
  load: 'dummy-load-5w',
};
const feeds = ['supply.out > tx.power', 'key.out > tx.key'];
const hookups = [
  { id: 'air', name: 'On air' },
  { id: 'test', name: 'On the dummy load' },
];

testRule(noDummyLoadHookup, {
  silent: [
    {
      name: 'a hook-up on the dummy load beside the one on air',
      station: drawStation({
        units,
        cables: [
          ...feeds,
          ['tx.antenna > wire.feed', { hookups: ['air'] }],
          ['tx.antenna > load.input', { hookups: ['test'] }],
        ],
        hookups,
      }),
    },
    {
      name: 'a switch that a hook-up turns to the load',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          rig: 'transceiver-100w',
          selector: 'coax-switch',
          load: 'dummy-load-100w',
        },
        cables: ['supply.out > rig.power', 'rig.antenna > selector.common', 'selector.two > load.input'],
        hookups: [{ id: 'test', name: 'Test', settings: { selector: { position: 'two' } } }],
      }),
    },
    {
      name: 'a station that only listens',
      station: drawStation({ units: { receiver: 'receiver-with-mute', wire: 'wire-antenna' } }),
    },
  ],
  reported: [
    {
      name: 'an antenna only',
      station: drawStation({ units, cables: [...feeds, 'tx.antenna > wire.feed'] }),
      message: 'none',
      severity: 'note',
      at: { unit: 'tx' },
      values: { transmitter: 'tx' },
    },
    {
      name: 'two hook-ups, each with its antenna and its key',
      station: drawStation({
        units: { ...units, other: 'straight-key', long: 'wire-antenna' },
        cables: [
          'supply.out > tx.power',
          ['key.out > tx.key', { hookups: ['air'] }],
          ['other.out > tx.key', { hookups: ['long'] }],
          ['tx.antenna > wire.feed', { hookups: ['air'] }],
          ['tx.antenna > long.feed', { hookups: ['long'] }],
        ],
        hookups: [
          { id: 'air', name: 'On air' },
          { id: 'long', name: 'On the long wire' },
        ],
      }),
      message: 'none',
      severity: 'note',
      at: { unit: 'tx' },
      hookups: ['air', 'long'],
    },
    {
      name: 'one hook-up with its name',
      station: drawStation({
        units,
        cables: [...feeds, 'tx.antenna > wire.feed'],
        hookups: [{ id: 'air', name: 'On the dummy load' }],
      }),
      message: 'none',
      severity: 'note',
      at: { unit: 'tx' },
    },
    {
      name: 'a load on the side of the switch that no hook-up selects',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          rig: 'transceiver-100w',
          selector: 'coax-switch',
          load: 'dummy-load-100w',
        },
        cables: ['supply.out > rig.power', 'rig.antenna > selector.common', 'selector.two > load.input'],
        hookups,
      }),
      message: 'none',
      severity: 'note',
      at: { unit: 'rig' },
      hookups: ['air', 'test'],
    },
    {
      name: 'two transmitters and a load for one of them',
      station: drawStation({
        units: { ...units, other: 'cw-transmitter-5w' },
        cables: [...feeds, 'tx.antenna > load.input', 'other.antenna > wire.feed'],
      }),
      message: 'none',
      severity: 'note',
      at: { unit: 'other' },
    },
  ],
});
