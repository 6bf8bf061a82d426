import { noChangeover } from '../../../core/rules/rf/no-changeover.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';

const tee = made({ one: ['rf', 'bnc-jack'], two: ['rf', 'bnc-jack'], three: ['rf', 'bnc-jack'] }, [
  { id: 'a', type: 'rfPath', a: 'one', b: 'two', lossDb: 0 },
  { id: 'b', type: 'rfPath', a: 'one', b: 'three', lossDb: 0 },
]);
/** A tap in the line that takes so little of it. */
const coupler = (tapDb: number) =>
  made({ in: ['rf', 'bnc-jack'], out: ['rf', 'bnc-jack'], tap: ['rf', 'sma-jack'] }, [
    { id: 'line', type: 'rfPath', a: 'in', b: 'out', lossDb: 0.1 },
    { id: 'coupled', type: 'rfPath', a: 'in', b: 'tap', lossDb: tapDb },
  ]);
const keyed = { supply: 'bench-supply', tx: 'cw-transmitter-3w', key: 'straight-key' };
const feeds = ['supply.out > tx.power', 'key.out > tx.key'];
const tapped = (tapDb: number) =>
  drawStation({
    units: {
      ...keyed,
      coupler: { made: coupler(tapDb) },
      load: 'dummy-load-5w',
      computer: 'computer',
      sdr: 'sdr-receiver-usb',
    },
    cables: [
      ...feeds,
      'computer.usb-one > sdr.usb',
      'tx.antenna > coupler.in',
      'coupler.out > load.input',
      'coupler.tap > sdr.antenna',
    ],
  });
const onTee = {
  units: { ...keyed, tee: { made: tee }, receiver: 'receiver-without-mute', wire: 'wire-antenna' },
  cables: [...feeds, 'tx.antenna > tee.two', 'receiver.antenna > tee.three', 'tee.one > wire.feed'],
};

testRule(noChangeover, {
  silent: [
    {
      name: 'a changeover between the two',
      station: drawStation({
        units: { ...keyed, over: 'changeover-by-line', receiver: 'receiver-without-mute', wire: 'wire-antenna' },
        cables: [
          'supply.out > tx.power',
          'supply.out > over.power',
          'key.out > over.line',
          'over.key > tx.key',
          'over.transmitter > tx.antenna',
          'over.receiver > receiver.antenna',
          'over.antenna > wire.feed',
        ],
      }),
    },
    {
      name: 'a hand switch between the two',
      station: drawStation({
        units: { ...keyed, selector: 'coax-switch', receiver: 'receiver-without-mute', wire: 'wire-antenna' },
        cables: [
          ...feeds,
          'selector.one > tx.antenna',
          'selector.two > receiver.antenna',
          'selector.common > wire.feed',
        ],
      }),
    },
    {
      name: 'a receiver with an antenna of its own',
      station: drawStation({
        units: { ...keyed, receiver: 'receiver-without-mute', load: 'dummy-load-5w', wire: 'wire-antenna' },
        cables: [...feeds, 'tx.antenna > load.input', 'receiver.antenna > wire.feed'],
      }),
    },
    // 34.8 − 55 = −20.2 dBm: the SDR is blocked above −20 dBm.
    { name: 'a monitor receiver on a weak tap', station: tapped(55) },
  ],
  reported: [
    {
      name: 'a plain tee',
      station: drawStation(onTee),
      message: 'joined',
      severity: 'fault',
      at: { unit: 'tx', port: 'antenna' },
      values: { transmitter: 'tx', receiver: 'receiver' },
      hookups: ['as-drawn'],
    },
    {
      name: 'a plain tee, even if nothing keys the transmitter',
      station: drawStation({ ...onTee, cables: onTee.cables.filter((c) => c !== 'key.out > tx.key') }),
      message: 'joined',
      severity: 'fault',
      at: { unit: 'tx', port: 'antenna' },
    },
    {
      // 34.8 − 54 = −19.2 dBm.
      name: 'a tap that lets through just too much',
      station: tapped(54),
      message: 'joined',
      severity: 'fault',
      at: { unit: 'tx', port: 'antenna' },
      values: { receiver: 'sdr' },
    },
    {
      name: 'a tee in one of two hook-ups',
      station: drawStation({
        ...onTee,
        units: { ...onTee.units, load: 'dummy-load-5w' },
        cables: [
          ...feeds,
          'tee.one > wire.feed',
          'tee.three > receiver.antenna',
          ['tee.two > tx.antenna', { hookups: ['air'] }],
          ['tx.antenna > load.input', { hookups: ['test'] }],
        ],
        hookups: [
          { id: 'test', name: 'Test' },
          { id: 'air', name: 'On air' },
        ],
      }),
      message: 'joined',
      severity: 'fault',
      at: { unit: 'tx', port: 'antenna' },
      hookups: ['air'],
    },
  ],
});
