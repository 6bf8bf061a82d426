import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Makes the 28 V that surplus coax relays need. */
export const converter28v: UnitKind = {
  name: 'Step-up converter, 28 V 1 A',
  group: 'power',
  summary: '11 to 15 V in, 28 V out, common minus',
  words: ['boost', 'relay supply', 'dc dc'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'output', label: 'out', class: 'dc', connector: 'binding-posts', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'converter',
      type: 'converter',
      plus: 'input.plus',
      minus: 'input.minus',
      outPlus: 'output.plus',
      outMinus: 'output.minus',
      minV: 10.5,
      maxV: 16,
      absMaxV: 18,
      outVolts: 28,
      outOhms: 0.1,
      outAmps: 1,
      efficiency: 0.85,
      idleWatts: 0.3,
    },
    { id: 'minus', type: 'conductor', from: 'input.minus', to: 'output.minus', ohms: 0.003 },
  ],
  isolated: 'all',
  source: 'typical figures',
};
