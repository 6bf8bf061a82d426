import { transmitIntoReceiver } from '../../../core/rules/rf/transmit-into-receiver.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { rg58 } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

const centreMinus = {
  wiring: [
    { a: 'plus', b: 'shell' },
    { a: 'minus', b: 'centre' },
  ],
};
/** A keyed station with a changeover by its line; what is muted is muted by it. */
const behindChangeover = (dbm: number, muted = true) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      over: 'changeover-by-line',
      tx: { kind: 'cw-transmitter-5w', overrides: { 'output.dbm': dbm } },
      receiver: 'receiver-with-mute',
      key: 'straight-key',
      dipole: 'dipole',
    },
    cables: [
      'supply.out > over.power',
      'supply.out > tx.power',
      ['supply.out > receiver.power', centreMinus],
      'key.out > over.line',
      'over.key > tx.key',
      'tx.antenna > over.transmitter',
      'over.antenna > dipole.feed',
      'receiver.antenna > over.receiver',
      ...(muted ? ['over.mute > receiver.mute'] : []),
    ],
  });
/** What is left of a level after the relay (0.2 dB), its open side (35 dB) and two cables of 0.6 m. */
const leak = (dbm: number) => dbm - 0.2 - 35 - 1.2 * rg58;

const keyed = { supply: 'bench-supply', tx: 'cw-transmitter-3w', key: 'straight-key' };
const feeds = ['supply.out > tx.power', 'key.out > tx.key'];
/** A receiver that states nothing, at the far end of so many decibels. */
const plain = made({ antenna: ['rf', 'bnc-jack'] }, [
  { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50 },
]);
const pad = (lossDb: number) =>
  made({ one: ['rf', 'bnc-jack'], two: ['rf', 'bnc-jack'] }, [
    { id: 'pad', type: 'rfPath', a: 'one', b: 'two', lossDb },
  ]);
const padded = (lossDb: number) =>
  drawStation({
    units: { ...keyed, pad: { made: pad(lossDb) }, receiver: { made: plain } },
    cables: [...feeds, 'tx.antenna > pad.one', 'pad.two > receiver.antenna'],
  });

testRule(transmitIntoReceiver, {
  silent: [
    { name: 'the open side of a changeover, muted: −0.5 dBm', station: behindChangeover(34.8) },
    // 55.2 − 35.27 = 19.93 dBm of the 20 that it stands.
    { name: 'hardly less than it stands', station: behindChangeover(55.2) },
    // 34.8 − 25 − 0.07 = 9.73 dBm of the 10 that an unstated receiver is taken to stand.
    { name: 'a pad of 25 dB', station: padded(25) },
    {
      name: 'a transceiver’s own receiver, which it switches itself',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', dipole: 'dipole' },
        cables: ['supply.out > rig.power', 'rig.antenna > dipole.feed'],
      }),
    },
  ],
  reported: [
    {
      name: 'hardly more than it stands; muted or not makes no difference',
      station: behindChangeover(55.4),
      message: 'damage',
      severity: 'danger',
      at: { unit: 'receiver', port: 'antenna' },
      values: { level: leak(55.4), watts: 10 ** ((leak(55.4) - 30) / 10), limit: 20, way: 'over', assumed: '' },
      moments: ['sending', 'going back'],
    },
    {
      name: 'open behind the changeover: blocked, not burnt',
      station: behindChangeover(34.8, false),
      message: 'overload',
      severity: 'doubt',
      at: { unit: 'receiver', port: 'antenna' },
      values: { level: leak(34.8), limit: -10, transmitter: 'tx' },
      within: 0.002,
      moments: ['sending'],
    },
    {
      name: 'a pad of 24 dB is not enough for a receiver that states nothing',
      station: padded(24),
      message: 'damage',
      severity: 'danger',
      at: { unit: 'receiver', port: 'antenna' },
      values: { level: 34.8 - 24 - 1.2 * rg58, limit: 10, assumed: ' (assumed)', way: 'pad' },
    },
    {
      name: 'the cable from the transmitter in the receiver’s jack, in one of two hook-ups',
      station: drawStation({
        units: { ...keyed, receiver: 'receiver-without-mute', load: 'dummy-load-5w' },
        cables: [
          ...feeds,
          ['tx.antenna > load.input', { hookups: ['right'] }],
          ['receiver.antenna > tx.antenna', { hookups: ['wrong'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'damage',
      severity: 'danger',
      at: { unit: 'receiver', port: 'antenna' },
      // 3.02 W less 0.04 dB of cable.
      values: { level: 34.8 - 0.6 * rg58, watts: 10 ** ((34.8 - 0.6 * rg58 - 30) / 10), way: 'the cable' },
      hookups: ['wrong'],
    },
    {
      name: 'a second station’s transceiver through a hand switch: 50 dB are not enough for 100 W at an SDR that stands 0 dBm',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          rig: 'transceiver-100w',
          selector: 'coax-switch',
          dipole: 'dipole',
          computer: 'computer',
          sdr: { kind: 'sdr-receiver-usb', overrides: { 'input.damageDbm': -1 } },
        },
        cables: [
          'supply.out > rig.power',
          'computer.usb-two > sdr.usb',
          'selector.common > dipole.feed',
          'selector.one > rig.antenna',
          'selector.two > sdr.antenna',
        ],
      }),
      message: 'damage',
      severity: 'danger',
      at: { unit: 'sdr', port: 'antenna' },
      // 50 dBm, the switch's selected way 0.1 dB, its open side 50 dB, two cables of 0.6 m.
      values: { level: 50 - 0.1 - 50 - 1.2 * rg58, limit: -1 },
      within: 0.01,
    },
  ],
});
