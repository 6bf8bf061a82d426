import { voltageDrop } from '../../../core/rules/power/voltage-drop.ts';
import { drawStation } from '../../stations/draw.ts';
import { testRule } from '../test-rule.ts';

/** A 100 W transceiver (22 A sending) on a stiff supply through so much of so thick a lead. */
const rig = (kind: string, lengthM: number, units = 'switch-mode-supply') =>
  drawStation({
    units: { supply: units, rig: 'transceiver-100w', load: 'dummy-load-100w' },
    cables: [['supply.out > rig.power', { kind, lengthM }], 'rig.antenna > load.input'],
  });

// AWG 10 is 0.9989 Ω per 1000 ft (NBS Handbook 100): 3.277 mΩ/m; AWG 16 is 4.016, 13.18 mΩ/m.
const awg10 = 0.9989 / 304.8;
const awg16 = 4.016 / 304.8;

testRule(voltageDrop, {
  silent: [
    { name: '2 m of AWG 10: 22 A × 2 × 6.6 mΩ is 0.29 V, 2 %', station: rig('lead-awg-10', 2) },
    {
      name: 'the same 6 m that are too much, with a limit of 12 %',
      station: { ...rig('lead-awg-10', 6), settings: { maxDrop: 0.12 } },
    },
  ],
  reported: [
    {
      name: '6 m of AWG 10: 22 A × 2 × 19.7 mΩ is 0.87 V of 13.6 V',
      station: rig('lead-awg-10', 6),
      message: 'drop',
      severity: 'doubt',
      at: { unit: 'rig', port: 'power' },
      // At 22 A the supply holds 13.8 − 22 × 0.01 V; joints of a milliohm or less are left out of the sum.
      values: { drop: 22 * 2 * 6 * awg10, volts: 13.58, where: 'D1' },
      within: 0.06,
      moments: ['sending', 'going back'],
    },
    {
      name: '2 m of AWG 16, thin but short',
      station: rig('lead-awg-16', 2),
      message: 'drop',
      severity: 'doubt',
      at: { unit: 'rig', port: 'power' },
      values: { most: 22 * 4 * awg16, share: (22 * 4 * awg16) / 13.58 },
      within: 0.06,
    },
  ],
});
