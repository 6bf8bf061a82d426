import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Two supplies feed one load through a diode each. */
export const diodeJoiner: UnitKind = {
  name: 'Diode joiner, 20 A',
  group: 'power',
  summary: 'Two inputs, one output; 0.45 V lost',
  words: ['or-ing', 'backup', 'redundant', 'schottky'],
  ports: [
    { id: 'one', label: '1', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'optional' },
    { id: 'two', label: '2', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'optional' },
    { id: 'output', label: 'out', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'diode-one',
      type: 'diode',
      anode: 'one.plus',
      cathode: 'output.plus',
      volts: 0.45,
      atAmps: 10,
      ohms: 0.005,
      maxAmps: 20,
    },
    { id: 'minus-one', type: 'conductor', from: 'one.minus', to: 'output.minus', ohms: 0.001 },
    {
      id: 'diode-two',
      type: 'diode',
      anode: 'two.plus',
      cathode: 'output.plus',
      volts: 0.45,
      atAmps: 10,
      ohms: 0.005,
      maxAmps: 20,
    },
    { id: 'minus-two', type: 'conductor', from: 'two.minus', to: 'output.minus', ohms: 0.001 },
  ],
  isolated: 'all',
  source: 'typical figures',
};
