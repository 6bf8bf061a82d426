import { fuseWillOpen } from '../../../core/rules/power/fuse-will-open.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const heater = (amps: number) => made({ power: ['dc', 'two-pole-15'] }, [load('power.plus', 'power.minus', amps)]);
type Family = 'blade' | 'glass-fast' | 'glass-slow';
/** So many amperes through one fuse in the lead. */
const fused = (amps: number, rating: number, family: Family = 'blade') =>
  drawStation({
    units: { supply: 'switch-mode-supply', load: { made: heater(amps) } },
    cables: [['supply.out > load.power', { kind: 'lead-awg-10', fuse: { amps: rating, family, atM: 0.1 } }]],
  });
const crossed = [
  { a: 'plus', b: 'shell' },
  { a: 'minus', b: 'centre' },
];

testRule(fuseWillOpen, {
  silent: [
    { name: 'just under four fifths of 10 A', station: fused(7.9, 10) },
    {
      name: 'a keyed 22 A on 30 A',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', load: 'dummy-load-100w' },
        cables: [
          ['supply.out > rig.power', { kind: 'lead-awg-10', fuse: { amps: 30, family: 'blade', atM: 0.1 } }],
          'rig.antenna > load.input',
        ],
      }),
    },
  ],
  reported: [
    {
      name: 'just over four fifths of 10 A',
      station: fused(8.1, 10),
      message: 'near',
      severity: 'doubt',
      at: { cable: 'd1' },
      values: { amps: 8.1, share: 0.81, rated: 10, fuse: 'The fuse in D1', moment: 'in receive' },
      moments: ['receive'],
    },
    {
      name: 'a tenth over a glass fuse: it holds for now',
      station: fused(5.6, 5, 'glass-slow'),
      message: 'opens',
      severity: 'fault',
      at: { cable: 'd1' },
      // 112 %, below the first gate of IEC 60127-2 (150 %).
      values: { share: 1.12, time: 'sooner or later' },
    },
    {
      // 22 A are 147 % of 15 A: between the gates of 135 % (0.75 to 600 s) and 160 %.
      name: 'a transceiver on 15 A: opens in sending, is whole in receive',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', load: 'dummy-load-100w' },
        cables: [
          ['supply.out > rig.power', { kind: 'lead-awg-10', fuse: { amps: 15, family: 'blade', atM: 0.1 } }],
          'rig.antenna > load.input',
        ],
      }),
      message: 'opens',
      severity: 'fault',
      at: { cable: 'd1' },
      values: { amps: 22, share: 22 / 15, time: 'within 10 minutes', moment: 'in sending' },
      moments: ['sending', 'going back'],
    },
    {
      // 20 A are 200 % of 10 A: 0.15 to 5 s. At rest it is then open and carries nothing.
      name: 'a fuse that opens at once, in one of two hook-ups',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          strip: 'fused-strip',
          light: { made: heater(1) },
          heavy: { made: heater(20) },
        },
        cables: [
          ['supply.out > strip.input', { kind: 'lead-awg-10' }],
          ['strip.three > light.power', { hookups: ['light'] }],
          ['strip.three > heavy.power', { kind: 'lead-awg-10', hookups: ['heavy'] }],
        ],
        hookups: [
          { id: 'light', name: 'Light' },
          { id: 'heavy', name: 'Heavy' },
        ],
      }),
      message: 'opens',
      severity: 'fault',
      at: { unit: 'strip', port: 'three' },
      // The strip's own fuses are of 5 A: 400 % lies between the gates of 350 % (within 0.5 s) and 600 %.
      values: { amps: 20, rated: 5, share: 4, time: 'within 500 ms', fuse: 'The fuse of strip · 3' },
      hookups: ['heavy'],
      moments: ['receive'],
    },
    {
      // 1.1 A of a transmitter are 137.5 % of 0.8 A, quick glass; the key line's 0.5 mA comes on top.
      name: 'a quick glass fuse in a transmitter’s lead',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-5w', key: 'straight-key', load: 'dummy-load-5w' },
        cables: [
          ['tx.power > supply.out', { fuse: { amps: 0.8, family: 'glass-fast', atM: 0.5 } }],
          'key.out > tx.key',
          'tx.antenna > load.input',
        ],
      }),
      message: 'opens',
      severity: 'fault',
      at: { cable: 'd1' },
      values: { amps: 1.1005, share: 1.1005 / 0.8, time: 'sooner or later' },
    },
    {
      // Reversed and joined to the transmitter's metal by the coax, a receiver is a short through its own fuse.
      name: 'a reversed receiver whose metal is on minus',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w', receiver: 'receiver-without-mute' },
        cables: [
          'supply.out > tx.power',
          ['supply.out > receiver.power', { wiring: crossed, fuse: { amps: 1, family: 'blade', atM: 0.1 } }],
          'tx.antenna > receiver.antenna',
        ],
      }),
      message: 'opens',
      severity: 'fault',
      at: { cable: 'd2' },
      // The bench supply's 4 A: 400 % of 1 A.
      values: { amps: 4, share: 4, time: 'within 500 ms' },
      within: 0.05,
    },
  ],
});
