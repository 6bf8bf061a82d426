import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Makes 5 V for USB units from the 12 V of the station. */
export const buckConverter5v: UnitKind = {
  name: 'Step-down converter, 5 V 3 A',
  group: 'power',
  summary: '8 to 30 V in, USB-A out, common minus',
  words: ['buck', 'usb adapter', '12 V to 5 V'],
  ports: [
    { id: 'input', label: 'in', class: 'dc', connector: 'two-pole-30', side: 'left', needed: 'always' },
    { id: 'output', label: 'out', class: 'dc', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'converter',
      type: 'converter',
      plus: 'input.plus',
      minus: 'input.minus',
      outPlus: 'output.vbus',
      outMinus: 'output.ground',
      minV: 8,
      maxV: 30,
      absMaxV: 36,
      outVolts: 5.1,
      outOhms: 0.03,
      outAmps: 3,
      efficiency: 0.88,
      idleWatts: 0.2,
    },
    { id: 'minus', type: 'conductor', from: 'input.minus', to: 'output.ground', ohms: 0.003 },
  ],
  isolated: 'all',
  source: 'typical figures',
};
