import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** One lead becomes three, with nothing between. */
export const dcSplitter: UnitKind = {
  name: 'DC splitter, 3 ways unfused',
  group: 'power',
  summary: 'Two-pole connectors in parallel, no fuses',
  words: ['y lead', 'distribution', 'harness'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'one', label: '1', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
    { id: 'three', label: '3', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
  ],
  elements: [
    { id: 'plus-one', type: 'conductor', from: 'input.plus', to: 'one.plus', ohms: 0.001 },
    { id: 'minus-one', type: 'conductor', from: 'input.minus', to: 'one.minus', ohms: 0.001 },
    { id: 'plus-two', type: 'conductor', from: 'input.plus', to: 'two.plus', ohms: 0.001 },
    { id: 'minus-two', type: 'conductor', from: 'input.minus', to: 'two.minus', ohms: 0.001 },
    { id: 'plus-three', type: 'conductor', from: 'input.plus', to: 'three.plus', ohms: 0.001 },
    { id: 'minus-three', type: 'conductor', from: 'input.minus', to: 'three.minus', ohms: 0.001 },
  ],
  isolated: 'all',
  source: 'typical figures',
};
