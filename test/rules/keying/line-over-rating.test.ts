import { lineOverRating } from '../../../core/rules/keying/line-over-rating.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { joint } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

/** A line that so many volts hold up through so many ohms, to be pulled to ground. */
const line = (volts: number, ohms: number, connector = 'mono-35-jack') =>
  made({ line: ['control', connector] }, [
    { id: 'bias', type: 'pullUp', contact: `line.${connector === 'phono-jack' ? 'centre' : 'tip'}`, volts, ohms },
  ]);
/** Keyer (transistor: 30 V, 0.2 A, positive lines) with its paddle on a line. */
const keyed = (volts: number, ohms: number) =>
  drawStation({
    units: { paddle: 'paddle', keyer: 'keyer', amplifier: { made: line(volts, ohms) } },
    cables: ['paddle.out > keyer.paddle', 'keyer.out > amplifier.line'],
  });
/** One core of 0.14 mm² (134 Ω/km) and its screen (50 mΩ/m), 0.6 m; two joints of 3.5 mm each; the box's screw. */
const leadOhms = 0.6 * (0.134 + 0.05) + 4 * joint.jack35 + 0.005;
const hookups = [
  { id: 'right', name: 'Right' },
  { id: 'wrong', name: 'Wrong' },
];

testRule(lineOverRating, {
  silent: [
    { name: 'a keyer on a 12 V line of 12 mA', station: keyed(12, 1000) },
    { name: 'hardly less than its 30 V', station: keyed(29.9, 10_000) },
    // 24 V through 120 Ω and what the transistor and the lead add: 0.197 A.
    { name: 'hardly less than its 0.2 A', station: keyed(24, 120) },
    {
      name: 'a hand key does not mind a line below ground',
      station: drawStation({
        units: { key: 'straight-key', old: { made: line(-34.5, 10_000) } },
        cables: ['key.out > old.line'],
      }),
    },
  ],
  reported: [
    {
      name: 'a 48 V relay line',
      station: keyed(48, 1000),
      message: 'volts',
      severity: 'danger',
      at: { unit: 'keyer', port: 'out' },
      values: { volts: 48, limit: 30, port: 'keyer · key out' },
      // Once the keyer has let go, all is as in receive.
      moments: ['receive', 'going over'],
    },
    {
      name: '110 V of an old amplifier on a transceiver’s contact, in one of two hook-ups',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          rig: 'transceiver-100w',
          old: { made: line(110, 2000, 'phono-jack') },
          amplifier: 'amplifier-40w',
          load: 'dummy-load-100w',
        },
        cables: [
          'supply.out > rig.power',
          'supply.out > amplifier.power',
          'rig.antenna > load.input',
          ['old.line > rig.amplifier', { hookups: ['wrong'] }],
          ['rig.amplifier > amplifier.key', { hookups: ['right'] }],
        ],
        hookups,
      }),
      message: 'volts',
      severity: 'danger',
      at: { unit: 'rig', port: 'amplifier' },
      values: { volts: 110, limit: 30 },
      hookups: ['wrong'],
    },
    {
      name: 'a coil of 100 Ω on 24 V',
      station: keyed(24, 100),
      message: 'amps',
      severity: 'danger',
      at: { unit: 'keyer', port: 'out' },
      // The transistor leaves 1.5 Ω.
      values: { amps: 24 / (100 + 1.5 + leadOhms), limit: 0.2 },
      moments: ['sending', 'going back'],
    },
    {
      name: 'a hand key in a line of 0.6 A',
      station: drawStation({
        units: { key: 'straight-key', heavy: { made: line(24, 40, 'mono-635-jack') } },
        cables: ['heavy.line > key.out'],
      }),
      message: 'amps',
      severity: 'danger',
      at: { unit: 'key', port: 'out' },
      // 40 Ω, 0.1 Ω of contact, and the same lead.
      values: { amps: 24 / (40 + 0.1 + leadOhms), limit: 0.5 },
    },
    {
      name: 'a line below ground on a transistor for positive lines',
      station: keyed(-12, 1000),
      message: 'polarity',
      severity: 'danger',
      at: { unit: 'keyer', port: 'out' },
      values: { volts: -12 },
    },
  ],
});
