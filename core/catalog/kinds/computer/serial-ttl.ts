import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A serial port for the computer’s USB. */
export const serialTtl: UnitKind = {
  name: 'Serial interface, 3.3 V',
  group: 'computer',
  summary: 'USB-B to a 3.5 mm stereo jack: tip transmits, ring receives',
  words: ['com port', 'cat', 'ttl', 'usb serial'],
  ports: [
    { id: 'usb', label: 'USB', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'always' },
    { id: 'serial', label: 'serial', class: 'data', connector: 'stereo-35-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'usb.vbus',
      minus: 'usb.ground',
      law: 'current',
      amount: 0.05,
      minV: 4.4,
      maxV: 5.25,
      absMinV: -0.3,
      absMaxV: 5.5,
      reverseProtected: false,
    },
    {
      id: 'transmit',
      type: 'dataEnd',
      contact: 'serial.tip',
      standard: 'ttl3v3',
      role: 'drives',
      reference: 'serial.sleeve',
    },
    {
      id: 'receive',
      type: 'dataEnd',
      contact: 'serial.ring',
      standard: 'ttl3v3',
      role: 'listens',
      reference: 'serial.sleeve',
    },
    { id: 'link', type: 'dataEnd', contact: 'usb.data-plus', standard: 'usb', role: 'bus' },
  ],
  source: 'typical figures',
};
