import { storm } from '../../../core/rules/drawing/storm.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

testRule(storm, {
  silent: [
    {
      name: 'nothing outdoors',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-3w', load: 'dummy-load-5w' },
        cables: ['supply.out > tx.power', 'tx.antenna > load.input'],
      }),
    },
  ],
  reported: [
    {
      name: 'a mast with an antenna and a rotator',
      station: drawStation({
        units: {
          supply: 'switch-mode-supply',
          rig: 'transceiver-100w',
          beam: 'beam-three-element',
          controller: 'rotator-controller',
          rotator: 'rotator',
        },
        cables: ['supply.out > rig.power', 'rig.antenna > beam.feed', 'controller.cable > rotator.cable'],
      }),
      message: 'all',
      severity: 'note',
      at: { cable: 'r1' },
      values: { cables: 'R1, K1', units: 'supply, controller' },
    },
    {
      name: 'a battery station with a wire',
      station: drawStation({
        units: { battery: 'lifepo4-battery', rig: 'transceiver-100w', dipole: 'dipole' },
        cables: ['battery.out > rig.power', 'rig.antenna > dipole.feed'],
      }),
      message: 'outdoors',
      severity: 'note',
      at: { cable: 'r1' },
      values: { cables: 'R1' },
    },
  ],
});
