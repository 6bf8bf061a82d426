import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A small regulated supply with binding posts; it holds its current limit rather than switch off. */
export const benchSupply: UnitKind = {
  name: 'Bench supply, 13.8 V 3 A',
  group: 'power',
  summary: 'Regulated, limits its current; binding posts',
  words: ['psu', 'power supply', 'linear', 'regulated', '12 V'],
  ports: [{ id: 'out', label: 'output', class: 'dc', connector: 'binding-posts', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'out.plus',
      minus: 'out.minus',
      volts: 13.8,
      maxVolts: 14.1,
      sourceOhms: 0.05,
      amps: 3,
      peakAmps: 4,
      beyond: 'limits',
    },
  ],
  // Both posts float: neither is joined to the case.
  isolated: ['out.plus', 'out.minus'],
  cautions: ['Mains inside: leave the case shut.'],
  mains: true,
  source: 'typical figures',
};
