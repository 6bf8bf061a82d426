import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A large transformer supply that a crowbar protects. */
export const linearSupply35aProtected: UnitKind = {
  name: 'Linear supply, 13.8 V 35 A, crowbar',
  group: 'power',
  summary: '25 A continuous, 35 A peak; limits its current; over-voltage protection',
  words: ['psu', 'power supply', 'heavy'],
  ports: [
    { id: 'out', label: 'posts', class: 'dc', connector: 'stud-pair', side: 'right', needed: 'optional' },
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
      sourceOhms: 0.01,
      amps: 25,
      peakAmps: 35,
      beyond: 'limits',
    },
    { id: 'body', type: 'conductor', from: 'earth.earth', to: 'chassis', ohms: 0.001 },
  ],
  isolated: ['out.plus', 'out.minus'],
  cautions: ['Mains inside: never open it while it is plugged in.'],
  mains: true,
  source: 'typical figures',
};
