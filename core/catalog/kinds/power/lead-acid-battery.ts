import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A sealed lead-acid battery, rested and full. */
export const leadAcidBattery: UnitKind = {
  name: 'Lead-acid battery, 12 V 28 Ah',
  group: 'power',
  summary: 'Sealed; 12.85 V full, up to 14.7 V on charge; 6 mΩ',
  words: ['agm', 'gel', 'accumulator', 'car battery', 'sla'],
  ports: [{ id: 'out', label: 'poles', class: 'dc', connector: 'stud-pair', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'cells',
      type: 'battery',
      plus: 'out.plus',
      minus: 'out.minus',
      chemistry: 'agm',
      ampHours: 28,
      charge: 1,
      sourceOhms: 0.006,
      maxVolts: 14.7,
      cutOffV: 10.5,
      amps: 28,
      peakAmps: 2000,
      beyond: 'sags',
    },
  ],
  isolated: 'all',
  cautions: ['A short draws some 2000 A: put the fuse at the battery.', 'It gives off hydrogen on charge: ventilate.'],
  source: 'typical figures',
};
