import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A linear regulator for a 9 V accessory. */
export const regulator9v: UnitKind = {
  name: 'Regulator, 9 V 1 A',
  group: 'power',
  summary: '12 V in, 9 V out, barrel plugs, common minus',
  words: ['7809', 'step down', 'dropper'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'output', label: 'out', class: 'dc', connector: 'barrel-21-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'regulator',
      type: 'converter',
      plus: 'input.centre',
      minus: 'input.shell',
      outPlus: 'output.centre',
      outMinus: 'output.shell',
      minV: 11.5,
      maxV: 20,
      absMaxV: 30,
      outVolts: 9,
      outOhms: 0.05,
      outAmps: 1,
      efficiency: 0.7,
      idleWatts: 0.1,
    },
    { id: 'minus', type: 'conductor', from: 'input.shell', to: 'output.shell', ohms: 0.005 },
  ],
  isolated: 'all',
  source: 'typical figures',
};
