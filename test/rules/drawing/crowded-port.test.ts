import { crowdedPort } from '../../../core/rules/drawing/crowded-port.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const hookups = [
  { id: 'air', name: 'On air' },
  { id: 'load', name: 'On the load' },
];
const units = { tx: 'cw-transmitter-3w', load: 'dummy-load-5w', wire: 'wire-antenna', meter: 'swr-meter' };

testRule(crowdedPort, {
  silent: [
    {
      name: 'three leads on one pair of posts',
      station: drawStation({
        units: { supply: 'bench-supply', one: 'cw-transmitter-3w', two: 'cw-transmitter-5w', three: 'fused-strip' },
        cables: ['supply.out > one.power', 'supply.out > two.power', 'supply.out > three.input'],
      }),
    },
    {
      name: 'one jack, one cable in each hook-up',
      station: drawStation({
        units,
        cables: [
          ['tx.antenna > wire.feed', { hookups: ['air'] }],
          ['tx.antenna > load.input', { hookups: ['load'] }],
        ],
        hookups,
      }),
    },
    {
      name: 'earth wires on one stud',
      station: drawStation({
        units: { bar: 'earth-bar', one: 'arrestor', two: 'arrestor' },
        cables: ['bar.one > one.earth', 'two.earth > bar.one'],
      }),
    },
  ],
  reported: [
    {
      name: 'two in an antenna jack',
      station: drawStation({ units, cables: ['tx.antenna > wire.feed', 'load.input > tx.antenna'] }),
      message: 'crowded',
      severity: 'fault',
      at: { unit: 'tx', port: 'antenna' },
      values: { cables: 'R1 and R2', port: 'tx · antenna' },
      hookups: ['as-drawn'],
    },
    {
      name: 'three in a key jack',
      station: drawStation({
        units: { tx: 'cw-transmitter-3w', key: 'straight-key', keyer: 'keyer', over: 'changeover-by-line' },
        cables: ['key.out > tx.key', 'keyer.out > tx.key', 'tx.key > over.key'],
      }),
      message: 'crowded',
      severity: 'fault',
      at: { unit: 'tx', port: 'key' },
      values: { cables: 'K1, K2 and K3' },
    },
    {
      name: 'a cable that was left in every hook-up',
      station: drawStation({
        units,
        cables: ['tx.antenna > wire.feed', ['tx.antenna > load.input', { hookups: ['load'] }]],
        hookups,
      }),
      message: 'crowded',
      severity: 'fault',
      at: { unit: 'tx', port: 'antenna' },
      hookups: ['load'],
    },
  ],
});
