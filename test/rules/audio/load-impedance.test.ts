import { loadImpedance } from '../../../core/rules/audio/load-impedance.ts';
import { testRule } from '../test-rule.ts';
import { line } from './line.ts';

testRule(loadImpedance, {
  silent: [
    { name: '8 Ω on an output for 8 Ω', station: line({ leastOhms: 8, ohms: 0.5 }, { ohms: 8, watts: 5 }) },
    { name: 'headphones on it', station: line({ leastOhms: 8, ohms: 10 }, { ohms: 32, watts: 0.1 }) },
  ],
  reported: [
    {
      name: '4 Ω on an output for 8 Ω',
      station: line({ leastOhms: 8, ohms: 0.5 }, { ohms: 4 }),
      message: 'low',
      severity: 'doubt',
      at: { unit: 'a', port: 'out' },
      values: { ohms: 4.2, least: 8 },
      within: 0.05,
    },
    {
      // 4 V behind 0.1 Ω in 8 Ω and the lead: nearly 2 W.
      name: '2 W into a loudspeaker for 0.5 W',
      station: line({ volts: 4, ohms: 0.1 }, { ohms: 8, watts: 0.5 }),
      message: 'watts',
      severity: 'doubt',
      at: { unit: 'b', port: 'in' },
      values: { watts: 16 / 8, limit: 0.5 },
      within: 0.1,
    },
  ],
});
