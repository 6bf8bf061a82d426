import { audioLevel } from '../../../core/rules/audio/audio-level.ts';
import { testRule } from '../test-rule.ts';
import { line } from './line.ts';

const pcMicrophone = { ohms: 5000, fullVolts: 0.02, overloadVolts: 0.1 };
const lineIn = { fullVolts: 1, overloadVolts: 2 };

testRule(audioLevel, {
  silent: [
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
  ],
});
