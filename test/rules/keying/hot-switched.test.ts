import { hotSwitched } from '../../../core/rules/keying/hot-switched.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { rg58 } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

const line = { id: 'bias', type: 'pullUp', contact: 'line.tip', volts: 5, ohms: 1000 } as const;
const low = { type: 'voltageBelow', contact: 'line.tip', volts: 1 } as const;
/** A relay that its line moves: on after 6 ms, off after so long, and bounces a while. */
const relay = (releaseMs: number, bounceMs: number) =>
  made(
    { line: ['control', 'mono-35-jack'], tx: ['rf', 'bnc-jack'], antenna: ['rf', 'bnc-jack'] },
    [
      line,
      { id: 'path', type: 'rfPath', a: 'tx', b: 'antenna', lossDb: 0.2, isolationDb: 40, when: { on: ['relay'] } },
    ],
    { actors: [{ id: 'relay', label: 'relay', feels: low, operateMs: 6, releaseMs, bounceMs, does: 'changesOver' }] },
  );
/** A transmitter that makes RF 8 ms after its line and goes on for 4 ms. */
const transmitter = (dbm: number) =>
  made(
    { line: ['control', 'mono-35-jack'], antenna: ['rf', 'bnc-jack'] },
    [line, { id: 'output', type: 'rfSource', port: 'antenna', dbm, when: { on: ['rf'] } }],
    { actors: [{ id: 'rf', label: 'RF', feels: low, operateMs: 8, releaseMs: 4, does: 'sends' }] },
  );
const station = (releaseMs: number, bounceMs: number, dbm = 37) =>
  drawStation({
    units: {
      key: 'straight-key',
      tx: { made: transmitter(dbm) },
      relay: { made: relay(releaseMs, bounceMs) },
      load: 'dummy-load-5w',
    },
    cables: ['key.out > tx.line', 'key.out > relay.line', 'tx.antenna > relay.tx', 'relay.antenna > load.input'],
  });
const sensing = (set: { kind: string; overrides?: Record<string, number> }) => ({
  units: {
    supply: 'bench-supply',
    over: 'changeover-sensing-rf',
    tx: set,
    key: 'straight-key',
    wire: 'wire-antenna',
    load: 'dummy-load-5w',
  },
  cables: ['supply.out > over.power', 'supply.out > tx.power', 'key.out > tx.key', 'over.antenna > wire.feed'],
});

testRule(hotSwitched, {
  silent: [
    {
      // The transceiver closes its contact after 2 ms and makes RF after 17; the amplifier's relay takes 8 ms. Back, RF
      // ends after 4 ms; the contact opens after 10 ms and the relay 6 ms later.
      name: 'a transceiver and an amplifier without a sequencer, whose times fit',
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
    // Relay over at 6 ms, still at 7.9; RF from 8. Back: RF ends at 4 ms, the relay moves at 5.
    { name: 'still a tenth of a millisecond before RF', station: station(5, 1.9) },
    { name: 'too little RF to hurt a contact', station: station(1, 3, 19) },
  ],
  reported: [
    {
      // RF 3 ms after the key; the relay 6 ms after RF.
      name: 'a changeover that senses RF always meets it',
      station: drawStation({
        ...sensing({ kind: 'cw-transmitter-3w' }),
        cables: [...sensing({ kind: '' }).cables, 'over.transmitter > tx.antenna'],
      }),
      message: 'before',
      severity: 'danger',
      at: { unit: 'over' },
      values: { time: 6, watts: 10 ** ((34.8 - 0.6 * rg58 - 30) / 10), actor: 'over Relay' },
      moments: ['going over'],
    },
    {
      name: 'the same with a quarter of a watt, in one of two hook-ups',
      station: drawStation({
        ...sensing({ kind: 'cw-transmitter-3w', overrides: { 'output.dbm': 24 } }),
        cables: [
          ...sensing({ kind: '' }).cables,
          ['over.transmitter > tx.antenna', { hookups: ['air'] }],
          ['tx.antenna > load.input', { hookups: ['test'] }],
        ],
        hookups: [
          { id: 'test', name: 'Test' },
          { id: 'air', name: 'On air' },
        ],
      }),
      message: 'before',
      severity: 'doubt',
      at: { unit: 'over' },
      values: { time: 6, watts: 10 ** ((24 - 0.6 * rg58 - 30) / 10) },
      hookups: ['air'],
    },
    {
      // The line opens at 80 ms (a dit at 15 words a minute); the relay moves at 81, RF ends at 84.
      name: 'a relay that lets go before RF has ended',
      station: station(1, 0),
      message: 'after',
      severity: 'danger',
      at: { unit: 'relay' },
      values: { time: 84 - 81, watts: 10 ** 0.7 },
      within: 0.02,
      moments: ['going back'],
    },
    {
      // Over at 6 ms, bounces until 9; RF from 8.
      name: 'a relay that still bounces',
      station: station(5, 3),
      message: 'bounce',
      severity: 'danger',
      at: { unit: 'relay' },
      values: { actor: 'relay relay' },
      moments: ['going over'],
    },
  ],
});
