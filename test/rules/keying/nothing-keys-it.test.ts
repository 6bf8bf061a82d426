import { nothingKeysIt } from '../../../core/rules/keying/nothing-keys-it.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const units = { supply: 'bench-supply', tx: 'cw-transmitter-3w', key: 'straight-key', load: 'dummy-load-5w' };
const feeds = ['supply.out > tx.power', 'tx.antenna > load.input'];

testRule(nothingKeysIt, {
  silent: [
    { name: 'a key', station: drawStation({ units, cables: [...feeds, 'key.out > tx.key'] }) },
    {
      name: 'paddle, keyer and changeover in a row',
      station: drawStation({
        units: { ...units, paddle: 'paddle', keyer: 'keyer', over: 'changeover-by-line' },
        cables: [
          ...feeds,
          'supply.out > over.power',
          'paddle.out > keyer.paddle',
          'keyer.out > over.line',
          'over.key > tx.key',
        ],
      }),
    },
    {
      name: 'a transmitter put aside while one only listens',
      station: drawStation({
        units: { ...units, receiver: 'receiver-without-mute' },
        cables: [
          ...feeds.map((route): [string, { hookups: string[] }] => [route, { hookups: ['air'] }]),
          ['key.out > tx.key', { hookups: ['air'] }],
          'supply.out > receiver.power',
        ],
        hookups: [
          { id: 'air', name: 'On air' },
          { id: 'listening', name: 'Listening' },
        ],
      }),
    },
    {
      name: 'a transceiver with its microphone',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w' },
        cables: ['supply.out > rig.power'],
      }),
    },
  ],
  reported: [
    {
      name: 'no control at all',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w' },
        cables: ['supply.out > tx.power'],
      }),
      message: 'noControl',
      severity: 'fault',
      at: { unit: 'tx' },
      values: { transmitter: 'tx' },
    },
    {
      name: 'a key that leads nowhere',
      station: drawStation({ units, cables: feeds }),
      message: 'silent',
      severity: 'fault',
      at: { unit: 'tx' },
      values: { transmitter: 'tx', controls: 'key' },
    },
    {
      name: 'a changeover without power passes nothing on, and two controls do nothing',
      station: drawStation({
        units: { ...units, over: 'changeover-by-line', footswitch: 'straight-key' },
        cables: [...feeds, 'key.out > over.line', 'over.key > tx.key'],
      }),
      message: 'silent',
      severity: 'fault',
      at: { unit: 'tx' },
      values: { controls: 'key, footswitch' },
    },
    {
      name: 'a key line that is open in the core, in one of two hook-ups',
      station: drawStation({
        units,
        cables: [
          ...feeds,
          ['key.out > tx.key', { hookups: ['right'] }],
          ['tx.key > key.out', { wiring: [{ a: 'sleeve', b: 'sleeve' }], hookups: ['wrong'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'silent',
      severity: 'fault',
      at: { unit: 'tx' },
      hookups: ['wrong'],
    },
    {
      name: 'a transmitter without power',
      station: drawStation({ units, cables: ['tx.antenna > load.input', 'key.out > tx.key'] }),
      message: 'silent',
      severity: 'fault',
      at: { unit: 'tx' },
    },
  ],
});
