import type { Connector } from '../../station/schema/connector.ts';

const usbContacts: Connector['contacts'] = [
  { id: 'vbus', name: '5 V', role: 'live' },
  { id: 'data-minus', name: 'data −', role: 'second' },
  { id: 'data-plus', name: 'data +', role: 'second' },
  { id: 'ground', name: 'ground', role: 'return' },
];

const pins = (count: number, returns: readonly number[]): Connector['contacts'] =>
  Array.from({ length: count }, (_, i) => ({
    id: `pin${i + 1}`,
    name: `pin ${i + 1}`,
    role: returns.includes(i + 1) ? 'return' : 'live',
  }));

const usb = { contacts: usbContacts, contactOhms: 0.03, face: 'multi' } as const;
const usbSource =
  'USB 2.0 and USB Type-C specifications for the port currents; contact limit of 30 milliohms from memory';

/** Connectors with many contacts: computers, microphones. */
export const dataConnectors: Record<string, Connector> = {
  'usb-a-jack': {
    ...usb,
    name: 'USB-A socket',
    family: 'usb-a',
    gender: 'jack',
    mates: ['usb-a-plug'],
    amps: 1.5,
    source: usbSource,
  },
  'usb-a-plug': {
    ...usb,
    name: 'USB-A plug',
    family: 'usb-a',
    gender: 'plug',
    mates: ['usb-a-jack'],
    amps: 1.5,
    source: usbSource,
  },
  'usb-b-jack': {
    ...usb,
    name: 'USB-B socket',
    family: 'usb-b',
    gender: 'jack',
    mates: ['usb-b-plug'],
    amps: 1.5,
    source: usbSource,
  },
  'usb-b-plug': {
    ...usb,
    name: 'USB-B plug',
    family: 'usb-b',
    gender: 'plug',
    mates: ['usb-b-jack'],
    amps: 1.5,
    source: usbSource,
  },
  'usb-c-jack': {
    ...usb,
    name: 'USB-C socket',
    family: 'usb-c',
    gender: 'jack',
    mates: ['usb-c-plug'],
    amps: 3,
    source: usbSource,
  },
  'usb-c-plug': {
    ...usb,
    name: 'USB-C plug',
    family: 'usb-c',
    gender: 'plug',
    mates: ['usb-c-jack'],
    amps: 3,
    source: usbSource,
  },
  'microphone-8-jack': {
    name: '8-way microphone socket',
    family: 'microphone-8',
    gender: 'jack',
    // Pin 8 as the return is usual; the maker's manual decides.
    contacts: pins(8, [8]),
    mates: ['microphone-8-plug'],
    contactOhms: 0.01,
    amps: 3,
    face: 'multi',
    source: 'from memory: round 8-way screw connector; pin plans differ from maker to maker',
  },
  'microphone-8-plug': {
    name: '8-way microphone plug',
    family: 'microphone-8',
    gender: 'plug',
    contacts: pins(8, [8]),
    mates: ['microphone-8-jack'],
    contactOhms: 0.01,
    amps: 3,
    face: 'multi',
    source: 'from memory: round 8-way screw connector; pin plans differ from maker to maker',
  },
  'rj45-jack': {
    name: 'RJ-45 socket',
    family: 'rj45',
    gender: 'jack',
    contacts: pins(8, []),
    mates: ['rj45-plug'],
    contactOhms: 0.02,
    amps: 1,
    face: 'multi',
    standard: 'IEC 60603-7',
    source: 'from memory: IEC 60603-7, 20 milliohms, 1 A a contact',
  },
  'rj45-plug': {
    name: 'RJ-45 plug',
    family: 'rj45',
    gender: 'plug',
    contacts: pins(8, []),
    mates: ['rj45-jack'],
    contactOhms: 0.02,
    amps: 1,
    face: 'multi',
    standard: 'IEC 60603-7',
    source: 'from memory: IEC 60603-7, 20 milliohms, 1 A a contact',
  },
};
