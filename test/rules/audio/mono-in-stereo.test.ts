import { monoInStereo } from '../../../core/rules/audio/mono-in-stereo.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const hookups = ['desk', 'garden', 'field'].map((id) => ({ id, name: id }));

testRule(monoInStereo, {
  silent: [
    {
      name: 'stereo phones on their stereo extension lead',
      station: drawStation({
        units: { receiver: 'receiver-with-mute', phones: 'headphones' },
        cables: ['receiver.phones > phones.plug'],
      }),
    },
    {
      name: 'a paddle on its two-core lead',
      station: drawStation({ units: { paddle: 'paddle', keyer: 'keyer' }, cables: ['paddle.out > keyer.paddle'] }),
    },
    {
      name: 'a stereo plug in a mono jack: its ring touches nothing of the jack’s',
      station: drawStation({
        units: { key: 'straight-key', tx: 'cw-transmitter-3w' },
        cables: [['key.out > tx.key', { plugs: { a: 'mono-635-plug', b: 'stereo-35-plug' } }]],
      }),
    },
  ],
  reported: [
    {
      name: 'stereo phones on a mono extension lead',
      station: drawStation({
        units: { receiver: 'receiver-with-mute', phones: 'headphones' },
        cables: [['receiver.phones > phones.plug', { kind: 'extension-mono-635' }]],
      }),
      message: 'output',
      severity: 'fault',
      at: { unit: 'receiver', port: 'phones' },
      values: { cable: 'A1', port: 'receiver · phones' },
      hookups: ['as-drawn'],
    },
    {
      name: 'a hand key’s mono plug in a transceiver’s paddle jack, in two of three hook-ups',
      station: drawStation({
        units: { key: 'straight-key', rig: 'transceiver-100w' },
        cables: [
          [
            'key.out > rig.key',
            { kind: 'key-lead', plugs: { a: 'mono-635-plug', b: 'mono-35-plug' }, hookups: ['garden', 'field'] },
          ],
        ],
        hookups,
      }),
      message: 'line',
      severity: 'fault',
      at: { unit: 'rig', port: 'key' },
      values: { cable: 'K1' },
      hookups: ['garden', 'field'],
    },
    {
      name: 'a mono lead at the paddle’s own jack holds the dash lever down',
      station: drawStation({
        units: { paddle: 'paddle', keyer: 'keyer' },
        cables: [
          ['keyer.paddle > paddle.out', { kind: 'key-lead', plugs: { a: 'stereo-35-plug', b: 'mono-35-plug' } }],
        ],
      }),
      message: 'line',
      severity: 'fault',
      at: { unit: 'paddle', port: 'out' },
    },
    {
      name: 'a mono lead in a sound input: one channel is on ground, nothing is hurt',
      station: drawStation({
        units: { receiver: 'receiver-without-mute', computer: 'computer' },
        cables: [['receiver.phones > computer.sound-in', { plugs: { a: 'stereo-35-plug', b: 'mono-35-plug' } }]],
      }),
      message: 'unused',
      severity: 'doubt',
      at: { unit: 'computer', port: 'sound-in' },
    },
    {
      name: 'a loudspeaker’s own mono plug in a stereo extension lead',
      station: drawStation({
        units: { computer: 'computer', speaker: 'loudspeaker' },
        cables: [['computer.sound-out > speaker.plug', { kind: 'extension-stereo-35' }]],
      }),
      message: 'extended',
      severity: 'fault',
      at: { unit: 'speaker', port: 'plug' },
      values: { plug: 'speaker', port: 'computer · sound out', harm: 'shorts an amplifier output' },
    },
  ],
});
