import type { UnitKind } from '../../../station/schema/unit-kind.ts';

const port = (id: string): UnitKind['elements'][number] => ({
  id: `power-${id}`,
  type: 'supply',
  plus: `${id}.vbus`,
  minus: `${id}.ground`,
  volts: 5,
  maxVolts: 5.25,
  sourceOhms: 0.1,
  amps: 0.5,
  peakAmps: 0.9,
  beyond: 'shutsDown',
});

/** A computer as the station sees it: USB sockets and sound. */
export const computer: UnitKind = {
  name: 'Computer',
  group: 'computer',
  summary: 'Two USB-A sockets, 0.5 A each; 3.5 mm sound out and in',
  words: ['pc', 'laptop', 'notebook', 'sound card', 'logging'],
  ports: [
    { id: 'usb-one', label: 'USB 1', class: 'data', connector: 'usb-a-jack', side: 'left', needed: 'optional' },
    { id: 'usb-two', label: 'USB 2', class: 'data', connector: 'usb-a-jack', side: 'left', needed: 'optional' },
    {
      id: 'sound-out',
      label: 'sound out',
      class: 'audio',
      connector: 'stereo-35-jack',
      side: 'right',
      needed: 'optional',
    },
    {
      id: 'sound-in',
      label: 'sound in',
      class: 'audio',
      connector: 'stereo-35-jack',
      side: 'right',
      needed: 'optional',
    },
  ],
  elements: [
    port('usb-one'),
    port('usb-two'),
    { id: 'sound-left', type: 'audioSource', contact: 'sound-out.tip', volts: 1, ohms: 50, leastOhms: 16 },
    { id: 'sound-right', type: 'audioSource', contact: 'sound-out.ring', volts: 1, ohms: 50, leastOhms: 16 },
    { id: 'record-left', type: 'audioLoad', contact: 'sound-in.tip', ohms: 10_000, fullVolts: 1, overloadVolts: 2 },
    { id: 'record-right', type: 'audioLoad', contact: 'sound-in.ring', ohms: 10_000, fullVolts: 1, overloadVolts: 2 },
  ],
  mains: true,
  source: 'typical figures; port current by the USB 2.0 specification',
};
