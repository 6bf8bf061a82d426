import { transmitIntoNothing } from '../../../core/rules/rf/transmit-into-nothing.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const keyed = { supply: 'bench-supply', tx: 'cw-transmitter-3w', key: 'straight-key' };
const feeds = ['supply.out > tx.power', 'key.out > tx.key'];
const big = { supply: 'switch-mode-supply', rig: 'transceiver-100w' };
const selector = { ...big, selector: 'coax-switch', load: 'dummy-load-100w' };
const watts = 10 ** 0.48; // 34.8 dBm

testRule(transmitIntoNothing, {
  silent: [
    {
      name: 'into a dummy load',
      station: drawStation({
        units: { ...keyed, load: 'dummy-load-5w' },
        cables: [...feeds, 'tx.antenna > load.input'],
      }),
    },
    {
      name: 'through an idle amplifier and a switch to the antenna',
      station: drawStation({
        units: { ...selector, amplifier: 'amplifier-40w', dipole: 'dipole' },
        cables: [
          'supply.out > rig.power',
          'rig.antenna > amplifier.input',
          'amplifier.output > selector.common',
          'selector.one > dipole.feed',
          'selector.two > load.input',
        ],
      }),
    },
    {
      name: 'a transmitter without a key sends nothing into its open jack',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w' },
        cables: ['supply.out > tx.power'],
      }),
    },
    {
      name: 'a tee of antenna and receiver is no open end',
      station: drawStation({
        units: { ...keyed, over: 'changeover-sensing-rf', wire: 'wire-antenna', receiver: 'receiver-without-mute' },
        cables: [
          ...feeds,
          'supply.out > over.power',
          'over.transmitter > tx.antenna',
          'over.receiver > receiver.antenna',
          'over.antenna > wire.feed',
        ],
      }),
    },
  ],
  reported: [
    {
      name: 'nothing in the antenna jack',
      station: drawStation({ units: keyed, cables: feeds }),
      message: 'open',
      severity: 'danger',
      at: { unit: 'tx', port: 'antenna' },
      values: { watts, end: 'tx · antenna' },
      moments: ['sending'],
    },
    {
      name: 'a switch position with nothing on it, in one of two hook-ups',
      station: drawStation({
        units: selector,
        cables: ['supply.out > rig.power', 'rig.antenna > selector.common', 'selector.two > load.input'],
        hookups: [
          { id: 'open', name: 'Open', settings: { selector: { position: 'one' } } },
          { id: 'load', name: 'On the load', settings: { selector: { position: 'two' } } },
        ],
      }),
      message: 'open',
      severity: 'danger',
      at: { unit: 'rig', port: 'antenna' },
      values: { watts: 100, end: 'selector · 1' },
      hookups: ['open'],
    },
    {
      name: 'a meter and a tuner, and no antenna behind them',
      station: drawStation({
        units: { ...keyed, meter: 'swr-meter', tuner: 'manual-tuner' },
        cables: [...feeds, 'tx.antenna > meter.transmitter', 'tuner.transmitter > meter.antenna'],
      }),
      message: 'open',
      severity: 'danger',
      at: { unit: 'tx', port: 'antenna' },
      values: { end: 'tuner · antenna', transmitter: 'tx' },
    },
    {
      name: 'straight into a receiver',
      station: drawStation({
        units: { ...keyed, receiver: 'receiver-without-mute' },
        cables: [...feeds, 'receiver.antenna > tx.antenna'],
      }),
      message: 'receiver',
      severity: 'danger',
      at: { unit: 'tx', port: 'antenna' },
      values: { watts, end: 'receiver · antenna' },
    },
    {
      name: 'a changeover that has no power leaves the transmitter on its open contact',
      station: drawStation({
        units: { ...keyed, over: 'changeover-by-line', wire: 'wire-antenna' },
        cables: [...feeds, 'over.transmitter > tx.antenna', 'over.antenna > wire.feed'],
      }),
      message: 'open',
      severity: 'danger',
      at: { unit: 'tx', port: 'antenna' },
      values: { end: 'over · transmitter' },
    },
  ],
});
