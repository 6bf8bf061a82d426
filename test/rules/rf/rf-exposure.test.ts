import { rfExposure } from '../../../core/rules/rf/rf-exposure.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

// OET Bulletin 65: S = 2.56 P G / (4 π R²) with 180/f² mW/cm² for anyone, 900/f² for those who know (47 CFR 1.1310).
const metres = (averageWatts: number, limit: number): number =>
  Math.sqrt((averageWatts * 1000 * 10 ** 0.215 * 2.56) / (4 * Math.PI * (limit / 14.06 ** 2))) / 100;

testRule(rfExposure, {
  silent: [
    {
      name: 'a dummy load',
      station: drawStation({
        units: { supply: 'switch-mode-supply', rig: 'transceiver-100w', load: 'dummy-load-100w' },
        cables: ['supply.out > rig.power', 'rig.antenna > load.input'],
      }),
    },
  ],
  reported: [
    {
      name: '100 W, 40 % keying, half of the time',
      station: onAntenna({ plan: { duty: 0.4, sendShare: 0.5 } }),
      message: 'keep',
      severity: 'note',
      at: { unit: 'antenna' },
      values: { watts: 20, length: metres(20, 180), controlled: metres(20, 900) },
    },
  ],
});
