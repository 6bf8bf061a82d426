import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A panel in full sun: it holds its short-circuit current, and its open voltage rises in the cold. */
export const solarPanel: UnitKind = {
  name: 'Solar panel, 100 W',
  group: 'power',
  summary: '22 V open (25 V in frost), 5.8 A at most',
  words: ['photovoltaic', 'pv', 'sun', 'module'],
  ports: [{ id: 'out', label: '', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'out.plus',
      minus: 'out.minus',
      volts: 22,
      maxVolts: 25,
      sourceOhms: 0.6,
      amps: 5.5,
      peakAmps: 5.8,
      beyond: 'limits',
    },
  ],
  isolated: 'all',
  outdoor: true,
  cautions: ['It gives its full voltage whenever there is light: cover it while you wire.'],
  source: 'typical figures',
};
