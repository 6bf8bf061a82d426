import { changeoverReversed } from '../../../core/rules/rf/changeover-reversed.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** Transmitter, plain receiver and changeover by its line, keyed by hand; the antenna on the changeover. */
const units = {
  supply: 'bench-supply',
  over: 'changeover-by-line',
  tx: 'cw-transmitter-3w',
  receiver: 'receiver-without-mute',
  wire: 'wire-antenna',
  key: 'straight-key',
};
const feeds = [
  'supply.out > over.power',
  'supply.out > tx.power',
  'supply.out > receiver.power',
  'key.out > over.line',
  'over.key > tx.key',
  'over.antenna > wire.feed',
];
const sensing = { ...units, over: 'changeover-sensing-rf' };
const sensingFeeds = [...feeds.filter((c) => !c.includes('line') && !c.includes('over.key')), 'key.out > tx.key'];

testRule(changeoverReversed, {
  silent: [
    {
      name: 'the right way round',
      station: drawStation({
        units,
        cables: [...feeds, 'over.transmitter > tx.antenna', 'over.receiver > receiver.antenna'],
      }),
    },
    {
      name: 'one that senses RF, the right way round',
      station: drawStation({
        units: sensing,
        cables: [...sensingFeeds, 'over.transmitter > tx.antenna', 'over.receiver > receiver.antenna'],
      }),
    },
    {
      name: 'a changeover without power stays with the receiver',
      station: drawStation({
        units,
        cables: [...feeds.slice(1), 'over.transmitter > tx.antenna', 'over.receiver > receiver.antenna'],
      }),
    },
    {
      name: 'a receiver on the side of a hand switch that is not selected',
      station: drawStation({
        units: { ...sensing, selector: 'coax-switch' },
        cables: [
          ...sensingFeeds.filter((c) => !c.includes('over')),
          'selector.one > tx.antenna',
          'selector.two > receiver.antenna',
          'selector.common > wire.feed',
        ],
      }),
    },
    {
      name: 'a receiver behind an amplifier, on the side of a hand switch that is not selected',
      station: drawStation({
        units: { ...units, big: 'switch-mode-supply', amplifier: 'amplifier-40w', selector: 'coax-switch' },
        cables: [
          'supply.out > tx.power',
          'supply.out > receiver.power',
          'big.out > amplifier.power',
          'key.out > tx.key',
          'tx.antenna > amplifier.input',
          'amplifier.output > selector.common',
          'selector.one > wire.feed',
          'selector.two > receiver.antenna',
        ],
      }),
    },
    {
      name: 'an amplifier’s own relay, with the transceiver’s own receiver',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', amplifier: 'amplifier-40w', dipole: 'dipole' },
        cables: [
          'supply.out > rig.power',
          'supply.out > amplifier.power',
          'rig.amplifier > amplifier.key',
          'rig.antenna > amplifier.input',
          'amplifier.output > dipole.feed',
        ],
      }),
    },
  ],
  reported: [
    {
      name: 'the two cables swapped',
      station: drawStation({
        units,
        cables: [...feeds, 'over.receiver > tx.antenna', 'over.transmitter > receiver.antenna'],
      }),
      message: 'reversed',
      unmasks: ['rf/wrong-band', 'rf/swr-high'],
      severity: 'danger',
      at: { unit: 'over' },
      // R1 is the antenna's.
      values: { changeover: 'over', transmitter: 'tx', receiver: 'receiver', cables: 'R2 and R3' },
    },
    {
      name: 'swapped behind a meter, laid from the other ends, in one of two hook-ups',
      station: drawStation({
        units: { ...units, meter: 'swr-meter' },
        cables: [
          ...feeds,
          'tx.antenna > meter.transmitter',
          ['receiver.antenna > over.transmitter', { hookups: ['wrong'] }],
          ['meter.antenna > over.receiver', { hookups: ['wrong'] }],
          ['receiver.antenna > over.receiver', { hookups: ['right'] }],
          ['meter.antenna > over.transmitter', { hookups: ['right'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'reversed',
      severity: 'danger',
      at: { unit: 'over' },
      values: { cables: 'R3 and R4' },
      hookups: ['wrong'],
    },
    {
      // In its idle position it feels 34.8 − 0.2 − 35 dBm at the transmitter's jack, of the 10 dBm that move it.
      name: 'one that senses RF and never feels enough of it on the wrong side',
      station: drawStation({
        units: sensing,
        cables: [...sensingFeeds, 'over.receiver > tx.antenna', 'over.transmitter > receiver.antenna'],
      }),
      message: 'never',
      unmasks: ['keying/hot-switched'],
      severity: 'fault',
      at: { unit: 'over' },
      values: { transmitter: 'tx', receiver: 'receiver', cables: 'R2 and R3', changeover: 'over' },
    },
    {
      // 50 dBm over the idle path's 35 dB are more than the 10 dBm at which it goes over.
      name: 'one that senses RF, with power enough to move it from the wrong side',
      station: drawStation({
        units: { ...sensing, tx: { kind: 'cw-transmitter-5w', overrides: { 'output.dbm': 50 } } },
        cables: [...sensingFeeds, 'over.receiver > tx.antenna', 'over.transmitter > receiver.antenna'],
      }),
      message: 'reversed',
      unmasks: ['rf/load-overpowered', 'rf/wrong-band', 'rf/swr-high'],
      severity: 'danger',
      at: { unit: 'over' },
      values: { transmitter: 'tx', receiver: 'receiver' },
    },
  ],
});
