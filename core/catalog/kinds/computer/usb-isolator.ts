import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** USB passes, the ground does not. */
export const usbIsolator: UnitKind = {
  name: 'USB isolator',
  group: 'computer',
  summary: 'USB-B in, USB-A out, 0.4 A; own converter',
  words: ['ground loop', 'galvanic'],
  ports: [
    { id: 'computer', label: 'computer', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'always' },
    { id: 'device', label: 'device', class: 'data', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'converter',
      type: 'converter',
      plus: 'computer.vbus',
      minus: 'computer.ground',
      outPlus: 'device.vbus',
      outMinus: 'device.ground',
      minV: 4.4,
      maxV: 5.25,
      absMaxV: 5.5,
      outVolts: 5,
      outOhms: 0.2,
      outAmps: 0.4,
      efficiency: 0.7,
      idleWatts: 0.1,
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
