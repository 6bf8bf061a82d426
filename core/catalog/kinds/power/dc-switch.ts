import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A switch in the plus of a lead. */
export const dcSwitch: UnitKind = {
  name: 'DC switch, 20 A',
  group: 'power',
  summary: 'Opens plus; two-pole connectors',
  words: ['main switch', 'on off', 'isolator'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'output', label: 'out', class: 'dc', connector: 'two-pole-30', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'switch',
      type: 'conductor',
      from: 'input.plus',
      to: 'output.plus',
      ohms: 0.004,
      when: { settings: { position: 'on' } },
    },
    { id: 'minus', type: 'conductor', from: 'input.minus', to: 'output.minus', ohms: 0.001 },
  ],
  settings: [
    {
      id: 'position',
      label: 'Position',
      options: [
        { id: 'on', label: 'on' },
        { id: 'off', label: 'off' },
      ],
      initial: 'on',
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
