import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A sealed glass-mat battery. */
export const agmBattery: UnitKind = {
  name: 'AGM battery, 12 V 28 Ah',
  group: 'power',
  summary: '12.85 V full; 6 mΩ, 1 kA and more into a short',
  words: ['sealed', 'lead', 'vrla', 'gel', 'accumulator'],
  ports: [{ id: 'out', label: 'poles', class: 'dc', connector: 'stud-pair', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'cells',
      type: 'battery',
      plus: 'out.plus',
      minus: 'out.minus',
      chemistry: 'agm',
      ampHours: 28,
      charge: 0.9,
      sourceOhms: 0.006,
      maxVolts: 14.7,
      chargeAmps: 8.4,
      cutOffV: 10.5,
      amps: 28,
      peakAmps: 2000,
      beyond: 'sags',
    },
  ],
  isolated: 'all',
  cautions: ['A short draws a thousand amperes and more: put a fuse that breaks it within 0.2 m of the plus pole.'],
  source: 'typical figures; 6 mΩ and 0.3 C of charge current as data sheets of 28 Ah batteries give',
};
