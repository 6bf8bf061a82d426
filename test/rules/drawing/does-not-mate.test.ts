import { doesNotMate } from '../../../core/rules/drawing/does-not-mate.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const hookups = [
  { id: 'right', name: 'Right' },
  { id: 'wrong', name: 'Wrong' },
];

testRule(doesNotMate, {
  silent: [
    {
      name: 'plugs that mate',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip', tx: 'cw-transmitter-3w', load: 'dummy-load-5w' },
        cables: ['supply.out > strip.input', 'strip.one > tx.power', 'tx.antenna > load.input'],
      }),
    },
    {
      name: 'a plug that an adapter takes',
      station: drawStation({
        units: { tx: 'cw-transmitter-3w', load: 'dummy-load-5w' },
        cables: [['tx.antenna > load.input', { plugs: { a: 'bnc-plug', b: 'uhf-plug' } }]],
      }),
    },
  ],
  reported: [
    {
      name: 'a two-pole plug at an SO-239',
      station: drawStation({
        units: { supply: 'bench-supply', tuner: 'manual-tuner' },
        cables: [['supply.out > tuner.antenna', { plugs: { a: 'ring-terminals', b: 'two-pole-30' } }]],
      }),
      message: 'apart',
      severity: 'fault',
      at: { cable: 'd1', end: 'b' },
      values: { plug: 'two-pole, 30 A', jack: 'SO-239 socket', port: 'tuner · antenna', cable: 'D1' },
    },
    {
      name: 'a network plug in a USB socket, at end a and in one of two hook-ups',
      station: drawStation({
        units: { computer: 'computer', sdr: 'sdr-receiver-usb' },
        cables: [
          ['computer.usb-one > sdr.usb', { hookups: ['right'] }],
          ['computer.usb-two > sdr.usb', { plugs: { a: 'rj45-plug', b: 'usb-b-plug' }, hookups: ['wrong'] }],
        ],
        hookups,
      }),
      message: 'apart',
      severity: 'fault',
      at: { cable: 'c2', end: 'a' },
      values: { plug: 'RJ-45 plug' },
      hookups: ['wrong'],
    },
  ],
});
