import { dcOnAudio } from '../../../core/rules/audio/dc-on-audio.ts';
import type { UnitElement } from '../../../core/station/schema/unit-kind.ts';
import { testRule } from '../test-rule.ts';
import { line } from './line.ts';

const bias = (volts: number, ohms: number): UnitElement => ({
  id: 'bias',
  type: 'pullUp',
  contact: 'in.tip',
  volts,
  ohms,
});

testRule(dcOnAudio, {
  silent: [
    { name: 'bias on an electret capsule', station: line({ dcOhms: 4000, maxDcVolts: 10 }, {}, [bias(3, 2200)]) },
    { name: 'a dynamic microphone without bias', station: line({ dcOhms: 600, maxDcVolts: 0.1 }, {}) },
  ],
  reported: [
    {
      // 5 V × 600 / 2800 = 1.07 V.
      name: 'bias on a dynamic microphone',
      station: line({ dcOhms: 600, maxDcVolts: 0.1 }, {}, [bias(5, 2200)]),
      message: 'dc',
      severity: 'danger',
      at: { unit: 'a', port: 'out' },
      values: { volts: (5 * 600) / 2800, limit: 0.1 },
    },
    {
      name: 'a little more than a capsule stands',
      station: line({ dcOhms: 1e6, maxDcVolts: 10 }, {}, [bias(12, 2200)]),
      message: 'dc',
      severity: 'doubt',
      at: { unit: 'a', port: 'out' },
      values: { volts: 12, limit: 10 },
      within: 0.01,
    },
    {
      // 3.0 V × 100 / 2200 = 0.14 V are left of it.
      name: 'a pad of 100 Ω across an electret’s bias',
      station: line({ dcOhms: 6000, maxDcVolts: 10, minDcVolts: 1.5 }, {}, [
        bias(3, 2100),
        { id: 'pad', type: 'conductor', from: 'in.tip', to: 'in.sleeve', ohms: 100 },
      ]),
      message: 'starved',
      severity: 'doubt',
      at: { unit: 'a', port: 'out' },
      values: { volts: 0.135, need: 1.5 },
      within: 0.05,
    },
  ],
});
