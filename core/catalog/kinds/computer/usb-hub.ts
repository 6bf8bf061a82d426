import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** More USB sockets from one. */
export const usbHub: UnitKind = {
  name: 'USB hub, powered',
  group: 'computer',
  summary: 'Upstream USB-B, four USB-A, 12 V',
  words: ['usb'],
  ports: [
    { id: 'power', label: 'power', class: 'dc', connector: 'barrel-21-jack', side: 'left', needed: 'always' },
    { id: 'upstream', label: 'computer', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'optional' },
    { id: 'one', label: '1', class: 'data', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'data', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
    { id: 'three', label: '3', class: 'data', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
    { id: 'four', label: '4', class: 'data', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'converter',
      type: 'converter',
      plus: 'power.centre',
      minus: 'power.shell',
      outPlus: 'one.vbus',
      outMinus: 'one.ground',
      minV: 9,
      maxV: 15,
      absMaxV: 18,
      outVolts: 5.05,
      outOhms: 0.05,
      outAmps: 3,
      efficiency: 0.85,
      idleWatts: 0.5,
    },
    { id: 'plus-two', type: 'conductor', from: 'one.vbus', to: 'two.vbus', ohms: 0.05 },
    { id: 'minus-two', type: 'conductor', from: 'one.ground', to: 'two.ground', ohms: 0.02 },
    { id: 'plus-three', type: 'conductor', from: 'one.vbus', to: 'three.vbus', ohms: 0.05 },
    { id: 'minus-three', type: 'conductor', from: 'one.ground', to: 'three.ground', ohms: 0.02 },
    { id: 'plus-four', type: 'conductor', from: 'one.vbus', to: 'four.vbus', ohms: 0.05 },
    { id: 'minus-four', type: 'conductor', from: 'one.ground', to: 'four.ground', ohms: 0.02 },
    { id: 'minus-in', type: 'conductor', from: 'power.shell', to: 'one.ground', ohms: 0.01 },
  ],
  source: 'typical figures',
};
