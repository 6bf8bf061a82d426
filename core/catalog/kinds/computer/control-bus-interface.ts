import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** One wire for several radios: whoever speaks pulls it down. */
export const controlBusInterface: UnitKind = {
  name: 'Control bus interface',
  group: 'computer',
  summary: 'USB-B to a 3.5 mm mono jack, open collector, 5 V',
  words: ['one wire', 'cat', 'bus', 'remote'],
  ports: [
    { id: 'usb', label: 'USB', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'always' },
    { id: 'bus', label: 'bus', class: 'data', connector: 'mono-35-jack', side: 'right', needed: 'optional' },
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
    { id: 'bias', type: 'pullUp', contact: 'bus.tip', volts: 5, ohms: 10_000, when: { powered: true } },
    { id: 'wire', type: 'dataEnd', contact: 'bus.tip', standard: 'openCollector', role: 'bus' },
    { id: 'link', type: 'dataEnd', contact: 'usb.data-plus', standard: 'usb', role: 'bus' },
  ],
  source: 'typical figures',
};
