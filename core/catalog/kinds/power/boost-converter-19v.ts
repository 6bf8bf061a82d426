import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Feeds a computer from the 12 V of the station; minus is common. */
export const boostConverter19v: UnitKind = {
  name: 'Step-up converter, 19 V 4 A',
  group: 'power',
  summary: '11 to 15 V in, 19.5 V out on a barrel plug, common minus',
  words: ['boost', 'laptop', 'dc dc'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'output', label: 'out', class: 'dc', connector: 'barrel-25-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'converter',
      type: 'converter',
      plus: 'input.plus',
      minus: 'input.minus',
      outPlus: 'output.centre',
      outMinus: 'output.shell',
      minV: 10.5,
      maxV: 16,
      absMaxV: 18,
      outVolts: 19.5,
      outOhms: 0.05,
      outAmps: 4,
      efficiency: 0.88,
      idleWatts: 0.5,
    },
    { id: 'minus', type: 'conductor', from: 'input.minus', to: 'output.shell', ohms: 0.003 },
  ],
  isolated: 'all',
  source: 'typical figures',
};
