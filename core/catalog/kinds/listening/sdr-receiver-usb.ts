import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A small receiver on the computer's USB; its input stands little. */
export const sdrReceiverUsb: UnitKind = {
  name: 'SDR receiver, USB',
  group: 'listening',
  summary: 'Powered by USB, SMA antenna jack',
  words: ['software defined', 'dongle', 'panadapter', 'rx'],
  ports: [
    { id: 'usb', label: 'USB', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'always' },
    { id: 'antenna', label: 'antenna', class: 'rf', connector: 'sma-jack', side: 'right', needed: 'always' },
  ],
  elements: [
    {
      id: 'draw',
      type: 'load',
      plus: 'usb.vbus',
      minus: 'usb.ground',
      law: 'current',
      amount: 0.3,
      minV: 4.4,
      maxV: 5.25,
      absMinV: -0.3,
      absMaxV: 5.5,
      reverseProtected: false,
    },
    { id: 'input', type: 'rfLoad', port: 'antenna', role: 'receiver', ohms: 50, damageDbm: 10, overloadDbm: -20 },
  ],
  source: 'typical figures',
};
