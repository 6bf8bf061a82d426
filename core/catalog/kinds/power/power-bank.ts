import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** A USB battery for the pocket. */
export const powerBank: UnitKind = {
  name: 'Power bank, 5 V 10 Ah',
  group: 'power',
  summary: '5 V on USB-A; switches itself off at little load',
  words: ['usb battery', 'portable'],
  ports: [{ id: 'out', label: '', class: 'dc', connector: 'usb-a-jack', side: 'right', needed: 'optional' }],
  elements: [
    {
      id: 'output',
      type: 'supply',
      plus: 'out.vbus',
      minus: 'out.ground',
      volts: 5.1,
      maxVolts: 5.25,
      sourceOhms: 0.1,
      amps: 2,
      peakAmps: 2.4,
      beyond: 'shutsDown',
    },
  ],
  isolated: 'all',
  source: 'typical figures',
};
