import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A wide-band receiver on the network or USB. */
export const sdrReceiverHf: UnitKind = {
  name: 'SDR receiver, HF',
  group: 'listening',
  summary: '0 to 30 MHz; 12 V, USB data; BNC',
  words: ['software defined', 'panadapter', 'rx'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'usb', label: 'USB', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'optional' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'bnc-jack', side: 'right', needed: 'always' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'power.centre',
      minus: 'power.shell',
      law: 'current',
      amount: 0.4,
      minV: 9,
      maxV: 15,
      absMinV: -0.5,
      absMaxV: 16,
      reverseProtected: false,
    },
    { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 10, overloadDbm: -15 },
    { id: 'data', type: 'dataEnd', contact: 'usb.data-plus', standard: 'usb', role: 'bus' },
  ],
  source: 'typical figures',
};
