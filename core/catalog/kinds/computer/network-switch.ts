import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Network for SDRs and computers; the same shell as some microphones. */
export const networkSwitch: UnitKind = {
  name: 'Network switch, 4 ways',
  group: 'computer',
  summary: '12 V; four modular sockets',
  words: ['ethernet', 'lan', 'switch'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'one', label: '1', class: 'data', connector: 'rj45-jack', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'data', connector: 'rj45-jack', side: 'right', needed: 'optional' },
    { id: 'three', label: '3', class: 'data', connector: 'rj45-jack', side: 'right', needed: 'optional' },
    { id: 'four', label: '4', class: 'data', connector: 'rj45-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.3,
      minV: 9,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'link-one', type: 'dataEnd', contact: 'one.pin1', standard: 'ethernet', role: 'bus', reference: 'chassis' },
    { id: 'link-two', type: 'dataEnd', contact: 'two.pin1', standard: 'ethernet', role: 'bus', reference: 'chassis' },
    {
      id: 'link-three',
      type: 'dataEnd',
      contact: 'three.pin1',
      standard: 'ethernet',
      role: 'bus',
      reference: 'chassis',
    },
    { id: 'link-four', type: 'dataEnd', contact: 'four.pin1', standard: 'ethernet', role: 'bus', reference: 'chassis' },
  ],
  cautions: ['Some microphones have the same plug: never put one in here.'],
  source: 'typical figures',
};
