import { meterAfterTuner } from '../../../core/rules/rf/meter-after-tuner.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

const line = (cables: string[]) =>
  drawStation({
    units: {
      supply: 'switch-mode-supply',
      rig: 'transceiver-100w',
      meter: 'swr-meter-200w',
      tuner: 'manual-tuner',
      dipole: 'dipole',
    },
    cables: ['supply.out > rig.power', ...cables],
    plan: { frequencyHz: 14_060_000 },
  });

// Common practice: the meter tells what the transmitter sees.
testRule(meterAfterTuner, {
  silent: [
    {
      name: 'transmitter, meter, tuner, antenna',
      station: line([
        'rig.antenna > meter.transmitter',
        'meter.antenna > tuner.transmitter',
        'tuner.antenna > dipole.feed',
      ]),
    },
  ],
  reported: [
    {
      name: 'transmitter, tuner, meter, antenna',
      station: line([
        'rig.antenna > tuner.transmitter',
        'tuner.antenna > meter.transmitter',
        'meter.antenna > dipole.feed',
      ]),
      message: 'behind',
      severity: 'note',
      at: { unit: 'meter' },
      values: { tuner: 'tuner' },
    },
  ],
});
