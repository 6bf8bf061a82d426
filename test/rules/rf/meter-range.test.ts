import { meterRange } from '../../../core/rules/rf/meter-range.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

const through = (scaleWatts: number, dbm: number, maxWatts = 500) =>
  onAntenna({
    between: made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
      { id: 'line', type: 'rfPath', a: 'in', b: 'out', lossDb: 0, scaleWatts, maxWatts },
    ]),
    rig: { 'output.dbm': dbm, 'output.maxDbm': dbm },
  });

testRule(meterRange, {
  silent: [
    { name: '100 W on a scale of 200 W', station: through(200, 50) },
    { name: '3 W on a scale of 15 W', station: through(15, 34.8) },
    { name: '100 W through a meter for 20 W, which burns', station: through(20, 50, 20) },
  ],
  reported: [
    {
      // The usual example: 5 W on a 2 kW scale cannot be read (common practice).
      name: '5 W on a scale of 2 kW',
      station: through(2000, 36.9897),
      message: 'low',
      severity: 'doubt',
      at: { unit: 'unit', port: 'in' },
      values: { watts: 5, scale: 2000 },
    },
    {
      name: '100 W on a scale of 20 W',
      station: through(20, 50),
      message: 'high',
      severity: 'doubt',
      at: { unit: 'unit', port: 'in' },
      values: { watts: 100, scale: 20 },
    },
  ],
});
