import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** RS-232 on one side, 5 V logic on the other. */
export const levelConverter: UnitKind = {
  name: 'Level converter, RS-232 to 5 V',
  group: 'computer',
  summary: 'D-sub 9 socket to 3.5 mm stereo; 5 V over USB',
  words: ['max232', 'ttl', 'cat'],
  ports: [
    { id: 'usb', label: '5 V', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'always' },
    { id: 'rs232', label: 'RS-232', class: 'data', connector: 'd-sub-9-jack', side: 'left', needed: 'optional' },
    { id: 'logic', label: '5 V logic', class: 'data', connector: 'stereo-35-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'usb.vbus',
      minus: 'usb.ground',
      law: 'current',
      amount: 0.02,
      minV: 4.4,
      maxV: 5.25,
      absMinV: -0.3,
      absMaxV: 5.5,
      reverseProtected: false,
    },
    {
      id: 'from-computer',
      type: 'dataEnd',
      contact: 'rs232.pin3',
      standard: 'rs232',
      role: 'listens',
      reference: 'rs232.pin5',
    },
    {
      id: 'to-computer',
      type: 'dataEnd',
      contact: 'rs232.pin2',
      standard: 'rs232',
      role: 'drives',
      reference: 'rs232.pin5',
    },
    { id: 'to-radio', type: 'dataEnd', contact: 'logic.tip', standard: 'ttl5', role: 'drives' },
    { id: 'from-radio', type: 'dataEnd', contact: 'logic.ring', standard: 'ttl5', role: 'listens' },
  ],
  source: 'typical figures',
};
