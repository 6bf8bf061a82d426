import { amplifierOverdriven } from '../../../core/rules/rf/amplifier-overdriven.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

/** 10 dB, 60 dBm at most: 100 W bring it to its full output. */
const amplifier = made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
  { id: 'stage', type: 'rfPath', a: 'in', b: 'out', oneWay: true, lossDb: -10, saturationDbm: 60, maxWatts: 100 },
]);
const driven = (dbm: number) => onAntenna({ between: amplifier, rig: { 'output.dbm': dbm, 'output.maxDbm': dbm } });

testRule(amplifierOverdriven, {
  silent: [
    { name: '100 W', station: driven(50) },
    { name: '20 W, 7 dB less', station: driven(43) },
    { name: 'no amplifier', station: onAntenna({}) },
  ],
  reported: [
    {
      name: '200 W',
      station: driven(53.0103),
      message: 'over',
      severity: 'danger',
      at: { unit: 'unit', port: 'in' },
      values: { watts: 200, limit: 100 },
    },
    {
      name: '5 W',
      station: driven(36.9897),
      message: 'little',
      severity: 'doubt',
      at: { unit: 'unit', port: 'in' },
      values: { watts: 5, need: 100 },
    },
  ],
});
