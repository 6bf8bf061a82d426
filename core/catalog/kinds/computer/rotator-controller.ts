import type { UnitKind } from '../../../station/schema/unit-kind.ts';

/** Turns the beam and shows where it points. */
export const rotatorController: UnitKind = {
  name: 'Rotator controller',
  group: 'computer',
  summary: 'Mains; motor and position on eight terminals; USB',
  words: ['rotor', 'beam', 'azimuth'],
  ports: [
    { id: 'cable', label: 'rotator', class: 'control', connector: 'terminals-8', side: 'right', needed: 'optional' },
    { id: 'usb', label: 'USB', class: 'data', connector: 'usb-b-jack', side: 'left', needed: 'optional' },
  ],
  elements: [
    {
      id: 'drive',
      type: 'contactPair',
      from: 'cable.pin1',
      to: '@motor',
      device: 'relay',
      onOhms: 0.1,
      maxVolts: 50,
      maxAmps: 5,
      when: { on: ['turn'] },
    },
    {
      id: 'motor-supply',
      type: 'supply',
      plus: '@motor',
      minus: 'cable.pin2',
      volts: 24,
      sourceOhms: 0.5,
      amps: 3,
      peakAmps: 4,
      beyond: 'limits',
    },
    { id: 'position', type: 'pullUp', contact: 'cable.pin3', volts: 5, ohms: 1000 },
    { id: 'link', type: 'dataEnd', contact: 'usb.data-plus', standard: 'usb', role: 'bus' },
  ],
  actors: [
    {
      id: 'turn',
      label: 'Turning',
      feels: { type: 'operator', label: 'Turn the beam' },
      operateMs: 0,
      releaseMs: 0,
      unpowered: true,
    },
  ],
  isolated: ['cable.pin1', 'cable.pin2'],
  cautions: ['Mains inside.'],
  mains: true,
  source: 'typical figures',
};
