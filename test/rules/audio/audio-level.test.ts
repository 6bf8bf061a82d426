import { audioLevel } from '../../../core/rules/audio/audio-level.ts';
import { drawStation } from '../../stations/draw.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { line, source } from './line.ts';

const pcMicrophone = { ohms: 5000, fullVolts: 0.02, overloadVolts: 0.1 };
const lineIn = { fullVolts: 1, overloadVolts: 2 };

/** Headphones in a receiver’s jack, mono or stereo. */
const phones = (jack: string) =>
  drawStation({
    units: {
      phones: 'headphones',
      receiver: {
        made: made({ out: ['audio', jack] }, [
          source({ volts: 0.5, ohms: 10 }),
          ...(jack.startsWith('stereo')
            ? [{ ...source({ volts: 0.5, ohms: 10 }), id: 'right', contact: 'out.ring' } as never]
            : []),
        ]),
      },
    },
    cables: [['receiver.out > phones.plug', { kind: 'extension-stereo-635' }]],
  });

testRule(audioLevel, {
  silent: [
    { name: 'stereo phones in a stereo jack', station: phones('stereo-635-jack') },
    { name: 'line into line', station: line({ volts: 0.316 }, lineIn) },
    { name: 'a microphone into its input', station: line({ volts: 0.02, ohms: 600 }, pcMicrophone) },
  ],
  reported: [
    {
      // 2.83 V is 1 W in 8 Ω.
      name: 'a loudspeaker output into a microphone input',
      station: line({ volts: 2.83, ohms: 0.1 }, pcMicrophone),
      message: 'over',
      severity: 'doubt',
      at: { unit: 'b', port: 'in' },
      values: { volts: 2.83, limit: 0.1 },
    },
    {
      // Dynamic microphones give 1 to 5 mV.
      name: 'a dynamic microphone into a line input',
      station: line({ volts: 0.003, ohms: 600 }, lineIn),
      message: 'faint',
      severity: 'doubt',
      at: { unit: 'b', port: 'in' },
      values: { volts: (0.003 * 10_000) / 10_600, full: 1 },
    },
    {
      name: 'stereo phones in a mono jack',
      station: phones('mono-635-jack'),
      message: 'deaf',
      severity: 'doubt',
      at: { unit: 'phones', port: 'plug' },
      values: { contact: 'ring', other: 'tip' },
    },
  ],
});
