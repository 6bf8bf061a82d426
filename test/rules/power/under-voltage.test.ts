import { underVoltage } from '../../../core/rules/power/under-voltage.ts';
import { drawStation } from '../../stations/draw.ts';
import { awg, joint } from '../ohms.ts';
import { testRule } from '../test-rule.ts';

/** A 100 W transceiver (1.5 A in receive, 22 A sending, from 11.7 V) on a lead of AWG 10. */
const rigOn = (supply: string, lengthM: number, overrides: Record<string, number> = {}) =>
  drawStation({
    units: { source: { kind: supply, overrides }, rig: 'transceiver-100w', load: 'dummy-load-100w' },
    cables: [['source.out > rig.power', { kind: 'lead-awg-10', lengthM }], 'rig.antenna > load.input'],
  });
/** The source, both cores and the joints of both ends. */
const wayOhms = (source: number, lengthM: number) => source + 2 * (joint.stud + lengthM * awg[10] + 0.00043);

const small = (minV: number) =>
  drawStation({
    units: { supply: 'bench-supply', receiver: { kind: 'receiver-without-mute', overrides: { 'draw.minV': minV } } },
    cables: ['supply.out > receiver.power'],
  });
// 13.8 V less 60 mA through 50 mΩ, posts, barrel and 1.2 m of AWG 18.
const smallVolts = 13.8 - 0.06 * (0.05 + 2 * (joint.post + joint.barrel + 0.6 * awg[18]));

testRule(underVoltage, {
  silent: [
    // 13.8 − 22 × (10 mΩ + 1.26 mΩ + 4 m × 3.277 mΩ) = 13.26 V.
    { name: 'a transceiver on a stiff supply', station: rigOn('switch-mode-supply', 2) },
    // 13.785 V is more than 3 % above 13.38 V (13.781 V).
    { name: 'just more than 3 % above the least', station: small(13.38) },
    {
      name: 'a unit that gets nothing at all, which is another rule’s business',
      station: drawStation({ units: { rig: 'transceiver-100w' } }),
    },
  ],
  reported: [
    {
      name: 'hardly 3 % above the least, in receive',
      station: small(13.39),
      message: 'edge',
      severity: 'doubt',
      at: { unit: 'receiver', port: 'power' },
      values: { volts: smallVolts, minV: 13.39, moment: 'in receive' },
      moments: ['receive'],
    },
    {
      // Between a quarter and a half of its charge, 12.0 and 12.3 V: 12.2 V.
      name: 'a resting car battery and 3 m of lead: fine in receive, too low sending',
      station: rigOn('lead-acid-battery', 3, { 'cells.charge': 0.25 + 0.25 * (0.2 / 0.3) }),
      message: 'low',
      severity: 'fault',
      at: { unit: 'rig', port: 'power' },
      values: { volts: 12.2 - 22 * wayOhms(0.006, 3), minV: 11.7, moment: 'in sending' },
      moments: ['sending', 'going back'],
    },
    {
      name: 'near the edge in receive already, and too low sending: told once, by the worst',
      station: rigOn('lead-acid-battery', 3, { 'cells.charge': 0.25 + 0.25 * (0.05 / 0.3) }),
      message: 'low',
      severity: 'fault',
      at: { unit: 'rig', port: 'power' },
      values: { volts: 12.05 - 22 * wayOhms(0.006, 3) },
    },
    {
      name: 'a long thin lead in one of two hook-ups',
      station: drawStation({
        units: { supply: 'bench-supply', tx: 'cw-transmitter-5w', key: 'straight-key', load: 'dummy-load-5w' },
        cables: [
          ['supply.out > tx.power', { hookups: ['near'] }],
          ['supply.out > tx.power', { kind: 'lead-awg-24', lengthM: 20, hookups: ['far'] }],
          'key.out > tx.key',
          'tx.antenna > load.input',
        ],
        hookups: [
          { id: 'near', name: 'Near' },
          { id: 'far', name: 'Far' },
        ],
      }),
      message: 'low',
      severity: 'fault',
      at: { unit: 'tx', port: 'power' },
      // 1.1 A and 0.5 mA in the closed key line (5 V, 10 kΩ) through 40 m of AWG 24: nearly 3.8 V.
      values: { volts: 13.8 - 1.1005 * (0.05 + 2 * (joint.post + joint.barrel + 20 * awg[24])), minV: 11 },
      hookups: ['far'],
    },
  ],
});
