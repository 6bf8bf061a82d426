import { portNeededOpen } from '../../../core/rules/drawing/port-needed-open.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const units = { supply: 'bench-supply', tx: 'cw-transmitter-3w', key: 'straight-key', load: 'dummy-load-5w' };
const cables = ['supply.out > tx.power', 'key.out > tx.key', 'tx.antenna > load.input'];
const hookups = [
  { id: 'air', name: 'On air' },
  { id: 'listening', name: 'Listening' },
];

testRule(portNeededOpen, {
  silent: [
    { name: 'everything in its place', station: drawStation({ units, cables }) },
    {
      name: 'optional jacks may stay open',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', dipole: 'dipole' },
        cables: ['supply.out > rig.power', 'rig.antenna > dipole.feed'],
      }),
    },
    {
      name: 'a transmitter put aside while one only listens',
      station: drawStation({
        units: { ...units, receiver: 'receiver-without-mute', wire: 'wire-antenna' },
        cables: [
          ...cables.map((route): [string, { hookups: string[] }] => [route, { hookups: ['air'] }]),
          'supply.out > receiver.power',
          'receiver.antenna > wire.feed',
        ],
        hookups,
      }),
    },
  ],
  reported: [
    {
      name: 'a transmitter without an antenna',
      station: drawStation({ units, cables: cables.slice(0, 2) }),
      message: 'open',
      severity: 'fault',
      at: { unit: 'tx', port: 'antenna' },
      values: { port: 'tx · antenna', unit: 'tx', when: ' to send' },
    },
    {
      name: 'a receiver that nothing at all is plugged into',
      station: drawStation({ units: { receiver: 'receiver-with-mute' } }),
      message: 'open',
      severity: 'fault',
      at: { unit: 'receiver', port: 'power' },
      values: { when: '', unit: 'receiver' },
    },
    {
      name: 'an arrestor without its earth wire',
      station: drawStation({
        units: { rig: 'transceiver-100w', arrestor: 'arrestor', dipole: 'dipole' },
        cables: ['rig.antenna > arrestor.station', 'arrestor.antenna > dipole.feed'],
      }),
      message: 'open',
      severity: 'fault',
      at: { unit: 'arrestor', port: 'earth' },
    },
    {
      name: 'a key that is plugged in for one of two hook-ups, while the transmitter is in use in both',
      station: drawStation({
        units,
        cables: ['supply.out > tx.power', 'tx.antenna > load.input', ['key.out > tx.key', { hookups: ['air'] }]],
        hookups,
      }),
      message: 'open',
      severity: 'fault',
      at: { unit: 'tx', port: 'key' },
      hookups: ['listening'],
    },
  ],
});
