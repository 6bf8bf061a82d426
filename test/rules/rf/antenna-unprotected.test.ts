import { antennaUnprotected } from '../../../core/rules/rf/antenna-unprotected.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

testRule(antennaUnprotected, {
  silent: [
    {
      name: 'an arrestor on the earth bar',
      station: drawStation({
        units: { dipole: 'dipole', arrestor: 'arrestor', bar: 'earth-bar', rig: 'transceiver-100w' },
        cables: ['dipole.feed > arrestor.antenna', 'arrestor.station > rig.antenna', 'arrestor.earth > bar.one'],
      }),
    },
    {
      name: 'a dummy load',
      station: drawStation({
        units: { load: 'dummy-load-100w', rig: 'transceiver-100w' },
        cables: ['load.input > rig.antenna'],
      }),
    },
  ],
  reported: [
    {
      name: 'a dipole straight on the transceiver',
      station: drawStation({
        units: { dipole: 'dipole', rig: 'transceiver-100w' },
        cables: ['dipole.feed > rig.antenna'],
      }),
      message: 'bare',
      severity: 'note',
      at: { unit: 'dipole' },
      values: { antenna: 'dipole', unit: 'rig' },
    },
    {
      name: 'an arrestor that is not on earth, and a tuner',
      station: drawStation({
        units: { dipole: 'dipole', arrestor: 'arrestor', tuner: 'manual-tuner', rig: 'transceiver-100w' },
        cables: [
          'dipole.feed > arrestor.antenna',
          'arrestor.station > tuner.antenna',
          'tuner.transmitter > rig.antenna',
        ],
      }),
      message: 'bare',
      severity: 'note',
      at: { unit: 'dipole' },
      values: { unit: 'rig' },
    },
  ],
});
