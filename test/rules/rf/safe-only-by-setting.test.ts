import { safeOnlyBySetting } from '../../../core/rules/rf/safe-only-by-setting.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

/** A unit that takes 10 mW, behind a pad of so many decibels in the same box or none. */
const transverter = (dbm: number, padDb: number) =>
  onAntenna({
    between: made({ in: ['rf', 'uhf-jack'], mid: ['rf', 'bnc-jack'], out: ['rf', 'uhf-jack'] }, [
      { id: 'pad', type: 'rfPath', a: 'in', b: 'mid', lossDb: padDb },
      { id: 'mixer', type: 'rfPath', a: 'mid', b: 'out', oneWay: true, lossDb: -30, saturationDbm: 40, maxWatts: 0.01 },
    ]),
    rig: { 'output.dbm': dbm, 'output.maxDbm': 50 },
  });

testRule(safeOnlyBySetting, {
  silent: [
    // 50 dBm less 40 dB is the 10 mW that it takes.
    { name: '100 W through 40 dB', station: transverter(50, 40) },
    { name: 'a transmitter set to its most', station: onAntenna({ rig: { 'output.dbm': 50, 'output.maxDbm': 50 } }) },
  ],
  reported: [
    {
      name: 'turned down to 10 mW, no pad',
      station: transverter(10, 0),
      message: 'most',
      severity: 'doubt',
      at: { unit: 'unit', port: 'mid' },
      values: { set: 0.01, most: 100, watts: 100, limit: 0.01 },
    },
  ],
});
