import { swrHigh } from '../../../core/rules/rf/swr-high.ts';
import { testRule } from '../test-rule.ts';
import { onAntenna } from './on-antenna.ts';

testRule(swrHigh, {
  silent: [
    { name: '75 Ω: SWR 1.5', station: onAntenna({ ohms: 75 }) },
    { name: '98 Ω: just below 2', station: onAntenna({ ohms: 98 }) },
    // 100 m of RG-58 lose 5.9 dB at 14 MHz: an SWR of 6 looks like 1.45 through it.
    { name: '300 Ω behind a long lossy cable', station: onAntenna({ ohms: 300, line: { lengthM: 100 } }) },
  ],
  reported: [
    {
      name: '125 Ω: 2.5',
      station: onAntenna({ ohms: 125 }),
      message: 'high',
      severity: 'doubt',
      at: { unit: 'rig', port: 'antenna' },
      // (2.5 − 1)/(2.5 + 1) squared is 18.4 % of 100 W.
      values: { swr: '2.5', reflected: 100 * (1.5 / 3.5) ** 2, forward: 100, end: 'antenna' },
    },
    {
      name: '10 Ω: 5',
      station: onAntenna({ ohms: 10 }),
      message: 'high',
      severity: 'fault',
      at: { unit: 'rig', port: 'antenna' },
      values: { swr: '5.0', reflected: 100 * (4 / 6) ** 2 },
    },
  ],
});
