import { tunerOutOfReach } from '../../../core/rules/rf/tuner-out-of-reach.ts';
import { made } from '../made.ts';
import { testRule } from '../test-rule.ts';
import { antenna, onAntenna } from './on-antenna.ts';

const tuner = made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
  { id: 'match', type: 'matcher', a: 'in', b: 'out', lossDb: 0.3, minOhms: 10, maxOhms: 600 },
]);
const automatic = made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
  { id: 'match', type: 'matcher', a: 'in', b: 'out', lossDb: 0.3, minOhms: 10, maxOhms: 600, minWatts: 10 },
]);
const seeing = (ohms: number, reactance = 0) => onAntenna({ antenna: antenna(ohms, { reactance }), between: tuner });

testRule(tunerOutOfReach, {
  silent: [
    { name: '400 Ω', station: seeing(400) },
    { name: '100 W into a tuner that needs 10 W', station: onAntenna({ between: automatic }) },
    // |Z|²/R is 130 Ω.
    { name: '65 Ω with 65 Ω of reactance', station: seeing(65, 65) },
  ],
  reported: [
    {
      name: '2 Ω',
      station: seeing(2),
      message: 'outside',
      severity: 'doubt',
      at: { unit: 'unit', port: 'out' },
      values: { low: 10, high: 600 },
    },
    {
      // In parallel 20 Ω and −400 Ω are 8020 Ω, in series 20 Ω: one layout can, the other can't.
      name: '20 Ω with −400 Ω of reactance',
      station: seeing(20, -400),
      message: 'doubtful',
      severity: 'note',
      at: { unit: 'unit', port: 'out' },
    },
    {
      // Common practice: automatic tuners ask for 2 to 10 W.
      name: '5 W into a tuner that needs 10 W',
      station: onAntenna({ between: automatic, rig: { 'output.dbm': 36.9897 } }),
      message: 'weak',
      severity: 'doubt',
      at: { unit: 'unit', port: 'in' },
      values: { watts: 5, need: 10 },
    },
    {
      name: '100 W into a tuner whose relays may move at 20 W',
      station: onAntenna({
        between: made({ in: ['rf', 'uhf-jack'], out: ['rf', 'uhf-jack'] }, [
          { id: 'match', type: 'matcher', a: 'in', b: 'out', lossDb: 0.3, minOhms: 10, maxOhms: 600, maxTuneWatts: 20 },
        ]),
      }),
      message: 'hot',
      severity: 'doubt',
      at: { unit: 'unit', port: 'in' },
      values: { watts: 100, most: 20 },
    },
  ],
});
