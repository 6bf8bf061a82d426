import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A mains charger with USB sockets. */
export const usbCharger: UnitKind = {
  name: 'USB charger, 5 V 2.4 A',
  group: 'power',
  summary: 'Two USB-A sockets, 5 V',
  words: ['mains charger', '5 V', 'phone charger'],
  ports: [
    { id: 'one', label: '1', class: 'dc', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
    { id: 'two', label: '2', class: 'dc', connector: 'usb-a-jack', side: 'right', needed: 'optional' },
  ],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'one.vbus',
      minus: 'one.ground',
      volts: 5.1,
      maxVolts: 5.25,
      sourceOhms: 0.05,
      amps: 2.4,
      peakAmps: 3,
      beyond: 'shutsDown',
    },
    { id: 'plus', type: 'conductor', from: 'one.vbus', to: 'two.vbus', ohms: 0.02 },
    { id: 'minus', type: 'conductor', from: 'one.ground', to: 'two.ground', ohms: 0.02 },
  ],
  isolated: 'all',
  mains: true,
  source: 'typical figures',
};
