import { coaxOverpowered } from '../../../core/rules/rf/coax-overpowered.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

const kind = 'coax-rg-6';
// RG-6 stands 300 V rms by its listing, 424 V peak; its own impedance is 75 Ω.
const watts = (w: number) => 10 * Math.log10(w * 1000);

testRule(coaxOverpowered, {
  silent: [
    { name: '100 W, matched', station: onAntenna({ line: { lengthM: 10 } }) },
    { name: '100 W at an SWR of 10', station: onAntenna({ ohms: 500, line: { lengthM: 10 } }) },
  ],
  reported: [
    {
      name: '1 kW on 75 Ω cable with 375 Ω at its end',
      station: onAntenna({ ohms: 375, rig: { 'output.dbm': watts(1000) }, line: { kind, lengthM: 10 } }),
      message: 'cable',
      severity: 'danger',
      at: { cable: 'r1' },
      values: { limit: 300 * Math.SQRT2 },
    },
    {
      name: '1.5 kW at an SWR of 3 in an SO-239: 671 V, where 500 V is the most',
      // The transceiver sees its own socket: 1500 W forward of which a quarter comes back, 150 Ω.
      station: onAntenna({ ohms: 150, rig: { 'output.dbm': watts(2000) } }),
      message: 'connector',
      severity: 'danger',
      at: { unit: 'rig', port: 'antenna' },
      // 2000 W forward are 1500 W net; √(2 · 1500 W · 50 Ω · 3).
      values: { volts: Math.sqrt(2 * 1500 * 50 * 3), limit: 500 },
    },
  ],
});
