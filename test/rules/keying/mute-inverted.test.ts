import { muteInverted } from '../../../core/rules/keying/mute-inverted.ts';
import { drawStation } from '../../stations/draw.ts';
import { load, made } from '../made.ts';
import { testRule } from '../test-rule.ts';

/** A receiver that is silent while its mute line is open, or while it is pulled. */
const receiver = (silentWhen: 'open' | 'pulled') =>
  made(
    { power: ['dc', 'two-pole-30'], mute: ['control', 'phono-jack'], antenna: ['rf', 'bnc-jack'] },
    [
      load('power.plus', 'power.minus', 0.1),
      { id: 'bias', type: 'pullUp', contact: 'mute.centre', volts: 5, ohms: 10_000 },
      { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 20 },
    ],
    {
      actors: [
        {
          id: 'mute',
          label: 'Mute',
          feels: { type: silentWhen === 'open' ? 'voltageAbove' : 'voltageBelow', contact: 'mute.centre', volts: 2 },
          operateMs: 1,
          releaseMs: 1,
          does: 'mutes',
        },
      ],
    },
  );
const station = (silentWhen: 'open' | 'pulled') =>
  drawStation({
    units: {
      supply: 'bench-supply',
      over: 'changeover-by-line',
      tx: 'cw-transmitter-3w',
      rx: { made: receiver(silentWhen) },
      key: 'straight-key',
      load: 'dummy-load-5w',
    },
    cables: [
      'supply.out > over.power',
      'supply.out > tx.power',
      'supply.out > rx.power',
      'key.out > over.line',
      'over.key > tx.key',
      'over.mute > rx.mute',
      'tx.antenna > over.transmitter',
      'over.antenna > load.input',
      'rx.antenna > over.receiver',
    ],
  });

testRule(muteInverted, {
  silent: [
    { name: 'silent while the line is pulled, which the changeover does in sending', station: station('pulled') },
  ],
  reported: [
    {
      name: 'silent while the line is open: deaf in receive',
      station: station('open'),
      message: 'inverted',
      severity: 'fault',
      at: { unit: 'rx' },
      values: { receiver: 'rx', transmitter: 'tx' },
    },
  ],
});
