import { adapterNeeded } from '../../../core/rules/drawing/adapter-needed.ts';
import type { Cable } from '../../../core/station/schema/schema.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** A coax with a PL-259 at a dummy load's BNC. */
const uhfAtBnc = (set: Partial<Cable> = {}) =>
  drawStation({
    units: { tx: 'cw-transmitter-3w', load: 'dummy-load-5w' },
    cables: [['tx.antenna > load.input', { plugs: { a: 'bnc-plug', b: 'uhf-plug' }, ...set }]],
  });
const bncJack = { plug: 'PL-259 plug', jack: 'BNC jack', port: 'load' };

testRule(adapterNeeded, {
  silent: [
    {
      name: 'the right plugs',
      station: drawStation({
        units: { tx: 'cw-transmitter-3w', load: 'dummy-load-5w' },
        cables: ['tx.antenna > load.input'],
      }),
    },
    {
      name: 'genderless poles of two sizes',
      station: drawStation({
        units: { strip: 'fused-strip', rig: 'transceiver-100w' },
        cables: [['strip.one > rig.power', { plugs: { a: 'two-pole-30', b: 'two-pole-15' } }]],
      }),
    },
    {
      name: 'what no adapter joins is another rule’s business',
      station: drawStation({
        units: { supply: 'bench-supply', tuner: 'manual-tuner' },
        cables: [['supply.out > tuner.antenna', { plugs: { a: 'ring-terminals', b: 'two-pole-30' } }]],
      }),
    },
  ],
  reported: [
    {
      name: 'none drawn',
      station: uhfAtBnc(),
      message: 'missing',
      severity: 'doubt',
      at: { cable: 'r1', end: 'b' },
      values: { ...bncJack, adapters: 'SO-239 socket to BNC plug', cable: 'R1' },
    },
    {
      name: 'fitted',
      station: uhfAtBnc({ adapters: { b: ['uhf-to-bnc'] } }),
      message: 'fitted',
      severity: 'note',
      at: { cable: 'r1', end: 'b' },
      values: { ...bncJack, adapters: 'SO-239 socket to BNC plug' },
    },
    {
      name: 'one that turns to N does not reach a BNC',
      station: uhfAtBnc({ adapters: { b: ['uhf-to-n'] } }),
      message: 'wrong',
      severity: 'doubt',
      at: { cable: 'r1', end: 'b' },
      values: { ...bncJack, drawn: 'SO-239 socket to N plug', adapters: 'SO-239 socket to BNC plug' },
    },
    {
      name: 'a row of two that does reach it',
      station: uhfAtBnc({ adapters: { b: ['uhf-to-n', 'n-to-bnc'] } }),
      message: 'several',
      severity: 'doubt',
      at: { cable: 'r1', end: 'b' },
      values: { adapters: 'SO-239 socket to N plug, N jack to BNC plug' },
    },
    {
      name: 'a phono lead at a BNC, at end a and in one of two hook-ups',
      station: drawStation({
        units: { over: 'changeover-by-line', receiver: 'receiver-with-mute' },
        cables: [
          ['over.receiver > receiver.antenna', { hookups: ['right'] }],
          ['over.receiver > receiver.antenna', { plugs: { a: 'phono-plug', b: 'phono-plug' }, hookups: ['wrong'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'missing',
      severity: 'doubt',
      at: { cable: 'r2', end: 'a' },
      values: { adapters: 'phono jack to BNC plug', port: 'over · receiver' },
      hookups: ['wrong'],
    },
  ],
});
