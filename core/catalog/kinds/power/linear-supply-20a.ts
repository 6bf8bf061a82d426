import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A transformer supply with a series regulator and no over-voltage protection. */
export const linearSupply20a: UnitKind = {
  name: 'Linear supply, 13.8 V 20 A',
  group: 'power',
  summary: '16 A continuous, 20 A peak; limits its current; raw 22 V before the pass transistors',
  words: ['psu', 'power supply', 'analogue'],
  ports: [
    { id: 'out', label: 'posts', class: 'dc', connector: 'binding-posts', side: 'right', needed: 'optional' },
    { id: 'earth', label: 'earth', class: 'earth', connector: 'earth-stud', side: 'bottom', needed: 'optional' },
  ],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'out.plus',
      minus: 'out.minus',
      volts: 13.8,
      maxVolts: 14.2,
      faultVolts: 22,
      sourceOhms: 0.02,
      amps: 16,
      peakAmps: 20,
      beyond: 'limits',
    },
    { id: 'body', type: 'conductor', from: 'earth.earth', to: 'chassis', ohms: 0.001 },
  ],
  isolated: ['out.plus', 'out.minus'],
  cautions: ['Mains inside: never open it while it is plugged in.'],
  mains: true,
  source: 'typical figures',
};
