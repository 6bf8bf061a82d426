import { firstElementLost } from '../../../core/rules/keying/first-element-lost.ts';
import type { Plan } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** Key, changeover by its line and transmitter: RF 10 + 3 ms after the key, 2 ms after its release: a dit loses 11 ms. */
const behindChangeover = (plan: Partial<Plan>) =>
  drawStation({
    units: {
      supply: 'bench-supply',
      over: 'changeover-by-line',
      tx: 'cw-transmitter-3w',
      key: 'straight-key',
      wire: 'wire-antenna',
    },
    cables: [
      'supply.out > over.power',
      'supply.out > tx.power',
      'key.out > over.line',
      'over.key > tx.key',
      'over.transmitter > tx.antenna',
      'over.antenna > wire.feed',
    ],
    plan,
  });
/** A transceiver: RF after 17 ms, 4 ms after the release: a dit loses 13 ms. */
const transceiver = (speedWpm: number) =>
  drawStation({
    units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', paddle: 'paddle', load: 'dummy-load-100w' },
    cables: ['supply.out > rig.power', 'paddle.out > rig.key', 'rig.antenna > load.input'],
    plan: { speedWpm },
  });

testRule(firstElementLost, {
  silent: [
    // 1200/27 = 44.4 ms, of which 11 are 24.8 %.
    { name: 'hardly less than a quarter at 27 words a minute', station: behindChangeover({ speedWpm: 27 }) },
    // 1200/23 = 52.2 ms, of which 13 are 24.9 %.
    { name: 'a transceiver at 23 words a minute', station: transceiver(23) },
    { name: 'voice has no dits', station: behindChangeover({ speedWpm: 40, mode: 'voice' }) },
  ],
  reported: [
    {
      // 1200/28 = 42.9 ms, of which 11 are 25.7 %.
      name: 'hardly more than a quarter at 28 words a minute',
      station: behindChangeover({ speedWpm: 28 }),
      message: 'short',
      severity: 'doubt',
      at: { unit: 'tx' },
      values: { dit: 1200 / 28, made: 1200 / 28 - 11, late: 13, tail: 2, control: 'key', wpm: 28 },
    },
    {
      name: 'a transceiver at 24 words a minute',
      station: transceiver(24),
      message: 'short',
      severity: 'doubt',
      at: { unit: 'rig' },
      values: { dit: 50, made: 37, late: 17, tail: 4 },
    },
    {
      // 60 words a minute: 20 ms; RF from 13 to 22.
      name: 'hardly half a dit',
      station: behindChangeover({ speedWpm: 60 }),
      message: 'short',
      severity: 'doubt',
      at: { unit: 'tx' },
      values: { dit: 20, made: 9 },
    },
    {
      name: 'keyed past the changeover it is in time (5 ms late, 4 ms after), through it it is not',
      station: drawStation({
        units: {
          supply: 'bench-supply',
          over: 'changeover-by-line',
          tx: 'cw-transmitter-5w',
          key: 'straight-key',
          load: 'dummy-load-5w',
        },
        cables: [
          'supply.out > over.power',
          'supply.out > tx.power',
          'tx.antenna > load.input',
          ['key.out > over.line', { hookups: ['through'] }],
          ['over.key > tx.key', { hookups: ['through'] }],
          ['key.out > tx.key', { hookups: ['past'] }],
        ],
        hookups: [
          { id: 'past', name: 'Past it' },
          { id: 'through', name: 'Through it' },
        ],
        plan: { speedWpm: 30 },
      }),
      message: 'short',
      severity: 'doubt',
      at: { unit: 'tx' },
      // 10 + 5 ms late, 4 ms after: 40 − 15 + 4.
      values: { dit: 40, made: 29, late: 15, tail: 4 },
      hookups: ['through'],
    },
  ],
});
