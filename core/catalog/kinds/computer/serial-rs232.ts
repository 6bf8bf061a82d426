import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A serial port for the computer’s USB. */
export const serialRs232: UnitKind = {
  name: 'Serial interface, RS-232',
  group: 'computer',
  summary: 'USB-B to D-sub 9: 3 transmits, 2 receives, 5 ground',
  words: ['com port', 'cat', 'rs-232', 'usb serial'],
  ports: [
    { id: 'usb', label: 'USB', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'always' },
    { id: 'serial', label: 'serial', class: 'data', connector: 'd-sub-9-plug', side: 'right', needed: 'optional' },
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
      contact: 'serial.pin3',
      standard: 'rs232',
      role: 'drives',
      reference: 'serial.pin5',
    },
    {
      id: 'receive',
      type: 'dataEnd',
      contact: 'serial.pin2',
      standard: 'rs232',
      role: 'listens',
      reference: 'serial.pin5',
    },
    { id: 'link', type: 'dataEnd', contact: 'usb.data-plus', standard: 'usb', role: 'bus' },
  ],
  source: 'typical figures',
};
