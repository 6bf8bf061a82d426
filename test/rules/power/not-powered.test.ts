import { notPowered } from '../../../core/rules/power/not-powered.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const crossed = [
  { a: 'plus', b: 'shell' },
  { a: 'minus', b: 'centre' },
];
/** A 12 V receiver (off below half of 9 V) on a supply of so many volts. */
const weak = (volts: number) =>
  drawStation({
    units: {
      supply: { kind: 'bench-supply', overrides: { 'output.volts': volts } },
      receiver: 'receiver-without-mute',
    },
    cables: ['supply.out > receiver.power'],
  });

testRule(notPowered, {
  silent: [
    {
      name: 'a strip that feeds three boxes',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip', tx: 'cw-transmitter-3w', over: 'changeover-by-line' },
        cables: ['supply.out > strip.input', 'strip.one > tx.power', 'strip.two > over.power'],
      }),
    },
    { name: 'hardly enough to be on at all: too low, but not dead', station: weak(4.52) },
    { name: 'a unit that nothing is plugged into', station: drawStation({ units: { tx: 'cw-transmitter-3w' } }) },
  ],
  reported: [
    {
      name: 'less than half of what it works from',
      station: weak(4.4),
      message: 'dead',
      severity: 'fault',
      at: { unit: 'receiver', port: 'power' },
      // Below 4.5 V it is off and draws ever less: nearly all of the 4.4 V arrive.
      values: { volts: 4.4, minV: 9, unit: 'receiver' },
      within: 0.01,
    },
    {
      name: 'a strip with nothing at its input',
      station: drawStation({
        units: { strip: 'fused-strip', tx: 'cw-transmitter-3w' },
        cables: ['strip.one > tx.power'],
      }),
      message: 'dead',
      severity: 'fault',
      at: { unit: 'tx', port: 'power' },
      values: { volts: 0, minV: 11 },
    },
    {
      name: 'a protected unit the wrong way round reads no minus volts',
      station: drawStation({
        units: { supply: 'bench-supply', receiver: 'receiver-without-mute' },
        cables: [['supply.out > receiver.power', { wiring: crossed }]],
      }),
      message: 'dead',
      severity: 'fault',
      at: { unit: 'receiver', port: 'power' },
      values: { volts: 0 },
    },
    {
      name: 'the supply’s lead is in one of two hook-ups only',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip', over: 'changeover-sensing-rf' },
        cables: [['supply.out > strip.input', { hookups: ['home'] }], 'strip.three > over.power'],
        hookups: [
          { id: 'home', name: 'Home' },
          { id: 'field', name: 'Field' },
        ],
      }),
      message: 'dead',
      severity: 'fault',
      at: { unit: 'over', port: 'power' },
      values: { volts: 0, minV: 11 },
      hookups: ['field'],
    },
    {
      name: 'a fuse that opens at once leaves everything behind it dead',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w' },
        cables: [['supply.out > rig.power', { fuse: { amps: 1, family: 'blade', atM: 0.1 } }]],
      }),
      message: 'dead',
      severity: 'fault',
      at: { unit: 'rig', port: 'power' },
      // 1.5 A are 150 % of its 1 A.
      values: { volts: 0, minV: 11.7 },
    },
  ],
});
