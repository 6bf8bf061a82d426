import { wrongBand } from '../../../core/rules/rf/wrong-band.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { antenna, onAntenna } from './on-antenna.ts';

const on20 = antenna(50, { minHz: 14_000_000, maxHz: 14_350_000 });
const lowPass = made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
  { id: 'filter', type: 'rfPath', a: 'in', b: 'out', lossDb: 0.3, maxHz: 8_000_000 },
]);

testRule(wrongBand, {
  silent: [{ name: 'a 20 m antenna on 20 m', station: onAntenna({ antenna: on20 }) }],
  reported: [
    {
      name: 'a 20 m antenna on 40 m',
      station: onAntenna({ antenna: on20, plan: { frequencyHz: 7_030_000 } }),
      message: 'outside',
      severity: 'fault',
      at: { unit: 'antenna' },
      values: { unit: 'antenna', frequency: '7.030 MHz', range: '14.000 MHz to 14.350 MHz' },
    },
    {
      name: 'a filter for 40 m in the line on 20 m',
      station: onAntenna({ between: lowPass }),
      message: 'outside',
      severity: 'fault',
      at: { unit: 'unit' },
      values: { range: 'up to 8.000 MHz' },
    },
    {
      name: 'a transceiver for HF and 6 m on 2 m',
      station: onAntenna({ plan: { frequencyHz: 144_300_000 } }),
      message: 'outside',
      severity: 'fault',
      at: { unit: 'rig' },
    },
  ],
});
