import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A LiFePO4 battery with its protection board, most of the way to full. */
export const lifepo4Battery: UnitKind = {
  name: 'LiFePO4 battery, 12.8 V 12 Ah',
  group: 'power',
  summary: '13.4 V rested, up to 14.6 V on charge; 40 mΩ with its protection board',
  words: ['lithium', 'lfp', 'accumulator', 'portable'],
  ports: [{ id: 'out', label: 'poles', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'cells',
      type: 'battery',
      plus: 'out.plus',
      minus: 'out.minus',
      chemistry: 'lifepo4',
      ampHours: 12,
      charge: 0.9,
      sourceOhms: 0.04,
      maxVolts: 14.6,
      cutOffV: 10.5,
      amps: 12,
      peakAmps: 300,
      beyond: 'sags',
    },
  ],
  isolated: 'all',
  cautions: ['A short draws some 300 A until its protection opens: put the fuse at the battery.'],
  source: 'typical figures',
};
