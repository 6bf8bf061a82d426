import { overVoltage } from '../../../core/rules/power/over-voltage.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { awg, joint } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

const centreMinus = [
  { a: 'plus', b: 'shell' },
  { a: 'minus', b: 'centre' },
];
/** A valve transmitter whose key line hangs at −34.5 V. */
const valves = made({ key: ['control', 'mono-35-jack'] }, [
  { id: 'grid', type: 'pullUp', contact: 'key.tip', volts: -34.5, ohms: 10_000 },
]);
const microphone = made({ out: ['audio', 'mono-35-jack'] }, [
  { id: 'bias', type: 'pullUp', contact: 'out.tip', volts: 8, ohms: 2200 },
]);
const recorder = (maxV: number) =>
  made({ line: ['audio', 'mono-35-jack', { limits: { tip: { maxV } } }] }, [
    { id: 'input', type: 'audioLoad', contact: 'line.tip', ohms: 10_000 },
  ]);
const lead = 0.6 * awg[18];

testRule(overVoltage, {
  silent: [
    {
      // 12.7 V rested, 14.7 V on charge; the receiver stands 15 V.
      name: 'a receiver on a battery that may be on charge',
      station: drawStation({
        units: { battery: 'lead-acid-battery', receiver: 'receiver-with-mute' },
        cables: [['battery.out > receiver.power', { wiring: centreMinus }]],
      }),
    },
    {
      // The adapter may stand 1.7 V higher: 18.2 V less 0.06 A through 4.6 Ω is just under the receiver's 18 V. The
      // 5 V from the computer don't rise with it, although the coax joins their grounds.
      name: 'two supplies that share only their ground',
      station: drawStation({
        units: {
          adapter: 'plug-in-adapter',
          receiver: 'receiver-without-mute',
          computer: 'computer',
          sdr: 'sdr-receiver-usb',
          selector: 'coax-switch',
        },
        cables: [
          'adapter.out > receiver.power',
          'computer.usb-one > sdr.usb',
          'selector.one > receiver.antenna',
          'selector.two > sdr.antenna',
        ],
      }),
    },
    {
      name: 'a key line below ground, at rest and pressed to 0 V',
      station: drawStation({
        units: { valves: { made: valves }, key: 'straight-key' },
        cables: ['key.out > valves.key'],
      }),
    },
    {
      name: 'a bias of 8 V on an input that stands 8.5 V',
      station: drawStation({
        units: { microphone: { made: microphone }, recorder: { made: recorder(8.5) } },
        cables: ['microphone.out > recorder.line'],
      }),
    },
  ],
  reported: [
    {
      name: 'an unregulated adapter with next to no load on it',
      station: drawStation({
        units: { adapter: 'plug-in-adapter', tx: 'cw-transmitter-3w' },
        cables: ['adapter.out > tx.power'],
      }),
      message: 'load',
      severity: 'danger',
      at: { unit: 'tx', port: 'power' },
      // 16.5 V less 35 mA through 4.5 Ω, four barrel joints and both cores; with the mains high 1.7 V more.
      values: { volts: 16.5 - 0.035 * (4.5 + 4 * joint.barrel + 2 * lead) + 1.7, limit: 16 },
      moments: ['receive'],
    },
    {
      name: 'a 5 V unit on 13.8 V',
      station: drawStation({
        units: { supply: 'bench-supply', sdr: 'sdr-receiver-usb' },
        cables: ['supply.out > sdr.usb'],
      }),
      message: 'load',
      severity: 'danger',
      at: { unit: 'sdr', port: 'usb' },
      // 13.8 V less 0.3 A through the supply, posts, cores and USB contacts (30 mΩ); 0.3 V of tolerance.
      values: { volts: 13.8 - 0.3 * (0.05 + 2 * (joint.post + lead + 0.03)) + 0.3, limit: 5.5 },
    },
    {
      name: 'a 12 V line on a 5 V key jack, in one of two hook-ups',
      station: drawStation({
        units: { supply: 'bench-supply', over: 'changeover-by-line', tx: 'cw-transmitter-3w', key: 'straight-key' },
        cables: [
          'supply.out > over.power',
          'supply.out > tx.power',
          ['over.line > tx.key', { hookups: ['wrong'] }],
          ['key.out > tx.key', { hookups: ['right'] }],
        ],
        hookups: [
          { id: 'right', name: 'Right' },
          { id: 'wrong', name: 'Wrong' },
        ],
      }),
      message: 'contact',
      severity: 'danger',
      at: { unit: 'tx', port: 'key', contact: 'tip' },
      // 12 V through 1 kΩ against 5 V through 4.7 kΩ; a volt over the jack's own 5 V is taken as its limit.
      values: { volts: (12 / 1000 + 5 / 4700) / (1 / 1000 + 1 / 4700), limit: 6, assumed: ' (assumed)' },
      hookups: ['wrong'],
    },
    {
      name: 'a microphone’s bias on a line input',
      station: drawStation({
        units: { microphone: { made: microphone }, recorder: { made: recorder(5) } },
        cables: ['recorder.line > microphone.out'],
      }),
      message: 'contact',
      severity: 'danger',
      at: { unit: 'recorder', port: 'line', contact: 'tip' },
      values: { volts: 8, limit: 5, assumed: '' },
    },
    {
      name: 'a valve transmitter’s key line on a modern key jack',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w', valves: { made: valves } },
        cables: ['supply.out > tx.power', 'valves.key > tx.key'],
      }),
      message: 'below',
      severity: 'danger',
      at: { unit: 'tx', port: 'key', contact: 'tip' },
      // −34.5 V through 10 kΩ against 5 V through 4.7 kΩ.
      values: { volts: (-34.5 / 10_000 + 5 / 4700) / (1 / 10_000 + 1 / 4700), limit: -1 },
    },
  ],
});
