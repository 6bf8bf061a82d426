import { keyLineStuck } from '../../../core/rules/keying/key-line-stuck.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** A paddle, a keyer and a transmitter; the paddle's lead with this plug at the keyer. */
const keyed = (plug: string) =>
  drawStation({
    units: { supply: 'bench-supply', keyer: 'keyer', paddle: 'paddle', tx: 'cw-transmitter-3w', load: 'dummy-load-5w' },
    cables: [
      ['supply.out > tx.power', { fuse: { amps: 2, family: 'blade', atM: 0.1 } }],
      ['paddle.out > keyer.paddle', { kind: 'paddle-lead', plugs: { a: 'stereo-35-plug', b: plug } }],
      'keyer.out > tx.key',
      'tx.antenna > load.input',
    ],
  });

testRule(keyLineStuck, {
  silent: [{ name: 'the stereo lead', station: keyed('stereo-35-plug') }],
  reported: [
    {
      // 34.8 dBm; IEC 60603-11: the mono plug’s sleeve lies on the ring, which is the dash lever.
      name: 'a mono plug in the keyer’s paddle jack',
      station: keyed('mono-35-plug'),
      message: 'stuck',
      severity: 'danger',
      at: { unit: 'tx' },
      values: { watts: 3.02 },
      moments: ['receive'],
    },
  ],
});
