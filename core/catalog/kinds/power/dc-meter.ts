import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Counts volts, amperes and ampere-hours by a shunt in the minus. */
export const dcMeter: UnitKind = {
  name: 'DC meter, 50 A',
  group: 'power',
  summary: 'Shunt in the minus, two-pole connectors',
  words: ['ammeter', 'battery monitor', 'shunt', 'watt meter', 'fuel gauge'],
  ports: [
    { id: 'source', label: 'source', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'load', label: 'load', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'plus', type: 'conductor', from: 'source.plus', to: 'load.plus', ohms: 0.0005 },
    { id: 'shunt', type: 'conductor', from: 'source.minus', to: 'load.minus', ohms: 0.0015, measures: true },
  ],
  isolated: 'all',
  cautions: ['Whatever takes its minus before the shunt is not counted.'],
  source: 'typical figures',
};
