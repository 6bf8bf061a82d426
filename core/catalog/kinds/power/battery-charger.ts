import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A mains charger that floats a lead-acid battery. */
export const batteryCharger: UnitKind = {
  name: 'Battery charger, 12 V 5 A',
  group: 'power',
  summary: '13.8 V float, 14.4 V on charge, 5 A',
  words: ['float', 'mains', 'maintainer'],
  ports: [{ id: 'out', label: 'clips', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'out.plus',
      minus: 'out.minus',
      volts: 13.8,
      maxVolts: 14.4,
      sourceOhms: 0.05,
      amps: 5,
      peakAmps: 5.2,
      beyond: 'limits',
    },
  ],
  isolated: 'all',
  cautions: ['Charge in a place with air: a lead-acid battery gives off hydrogen.'],
  mains: true,
  source: 'typical figures',
};
