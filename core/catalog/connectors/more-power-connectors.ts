import type { Connector } from '../../station/schema/connector.ts';

const pair: Connector['contacts'] = [
  { id: 'plus', name: 'plus', role: 'live' },
  { id: 'minus', name: 'minus', role: 'return' },
];
const coaxial: Connector['contacts'] = [
  { id: 'centre', name: 'centre', role: 'live' },
  { id: 'shell', name: 'shell', role: 'return' },
];

type Family = Pick<Connector, 'contacts' | 'contactOhms' | 'amps' | 'face' | 'source'> & {
  readonly name: string;
  readonly volts?: number;
  readonly standard?: string;
};

/** Jack and plug of one family. */
const both = (family: string, { name, ...figures }: Family): Record<string, Connector> => ({
  [`${family}-jack`]: { ...figures, name: `${name} jack`, family, gender: 'jack', mates: [`${family}-plug`] },
  [`${family}-plug`]: { ...figures, name: `${name} plug`, family, gender: 'plug', mates: [`${family}-jack`] },
});

/** Further DC connectors of desks, cars and models. */
export const morePowerConnectors: Record<string, Connector> = {
  ...both('eiaj-04', {
    name: 'coaxial DC 5.5/3.3 with pin, 10.5 to 13.5 V',
    contacts: coaxial,
    contactOhms: 0.03,
    amps: 2,
    volts: 13.5,
    face: 'barrel',
    standard: 'JEITA RC-5320A',
    source: 'JEITA RC-5320A: the size carries the voltage, 2 A; resistance as for other barrels',
  }),
  ...both('eiaj-05', {
    name: 'coaxial DC 6.5/4.4 with pin, 13.5 to 18 V',
    contacts: coaxial,
    contactOhms: 0.03,
    amps: 2,
    volts: 18,
    face: 'barrel',
    standard: 'JEITA RC-5320A',
    source: 'JEITA RC-5320A: the size carries the voltage, 2 A; resistance as for other barrels',
  }),
  ...both('bullet-60', {
    name: '60 A two-pole bullet',
    contacts: pair,
    contactOhms: 0.00055,
    amps: 30,
    face: 'two-pole',
    source: 'maker’s specification of the family: 30 A continuous, 60 A for a short time, 0.55 milliohms a contact',
  }),
  ...both('vehicle-12v', {
    name: 'vehicle accessory',
    contacts: coaxial,
    contactOhms: 0.02,
    amps: 8,
    volts: 24,
    face: 'barrel',
    standard: 'SAE J563',
    source: 'general works on vehicle outlets: centre plus, 10 to 20 A fuse; 8 A for long and 20 milliohms from memory',
  }),
  ...both('two-pin-flat', {
    name: 'two flat pins, polarised',
    contacts: pair,
    contactOhms: 0.003,
    amps: 15,
    face: 'two-pole',
    source: 'from memory: moulded two-pin plugs of mobile radios',
  }),
};
