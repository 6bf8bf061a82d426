import { fitsButShouldNot } from '../../../core/rules/drawing/fits-but-should-not.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const barrel25 = { plugs: { a: 'ring-terminals', b: 'barrel-25-plug' } };

testRule(fitsButShouldNot, {
  silent: [
    {
      name: 'a barrel of the right size',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w' },
        cables: ['supply.out > tx.power'],
      }),
    },
    {
      name: 'a mono plug in a stereo jack, which has a rule of its own',
      station: drawStation({
        units: { receiver: 'receiver-with-mute', phones: 'headphones' },
        cables: [['receiver.phones > phones.plug', { kind: 'extension-mono-635' }]],
      }),
    },
    {
      name: 'a stereo plug in a mono jack, in which nothing wrong touches',
      station: drawStation({
        units: { key: 'straight-key', tx: 'cw-transmitter-3w' },
        cables: [['key.out > tx.key', { plugs: { a: 'mono-635-plug', b: 'stereo-35-plug' } }]],
      }),
    },
    {
      name: '4 mm plugs in binding posts, where they belong',
      station: drawStation({
        units: { supply: 'bench-supply', strip: 'fused-strip' },
        cables: [['supply.out > strip.input', { plugs: { a: 'banana-pair', b: 'ring-terminals' } }]],
      }),
    },
  ],
  reported: [
    {
      name: 'a 2.5 mm barrel on a 2.1 mm pin',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w' },
        cables: [['supply.out > tx.power', barrel25]],
      }),
      message: 'fits',
      severity: 'danger',
      at: { cable: 'd1', end: 'b' },
      values: { plug: 'barrel plug 5.5/2.5', jack: 'barrel jack 5.5/2.1', port: 'tx · power' },
    },
    {
      name: 'a 4 mm plug in the centre of an SO-239, at end a and in one of two hook-ups',
      station: drawStation({
        units: { supply: 'bench-supply', dipole: 'dipole', tuner: 'manual-tuner' },
        cables: [
          ['dipole.feed > tuner.antenna', { hookups: ['right'] }],
          ['tuner.antenna > supply.out', { plugs: { a: 'banana-pair', b: 'ring-terminals' }, hookups: ['wrong'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'fits',
      severity: 'danger',
      at: { cable: 'r2', end: 'a' },
      values: { plug: '4 mm plugs' },
      hookups: ['wrong'],
    },
  ],
});
