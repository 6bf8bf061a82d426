import type { Connector } from '../../station/schema/connector.ts';

const contacts: Connector['contacts'] = [
  { id: 'centre', name: 'centre', role: 'live' },
  { id: 'shell', name: 'shell', role: 'return' },
];

type Figures = Omit<Connector, 'name' | 'family' | 'gender' | 'contacts' | 'mates' | 'misfits'>;

/** A jack and a plug that mate with each other and with nothing else. */
function couple(family: string, jackName: string, plugName: string, figures: Figures): Record<string, Connector> {
  const [jack, plug] = [`${family}-jack`, `${family}-plug`];
  return {
    [jack]: { ...figures, name: jackName, family, gender: 'jack', contacts, mates: [plug] },
    [plug]: { ...figures, name: plugName, family, gender: 'plug', contacts, mates: [jack] },
  };
}

/** Connectors with a centre and a shell round it. Watts are at HF with a matched load. */
export const coaxialConnectors: Record<string, Connector> = {
  ...couple('bnc', 'BNC jack', 'BNC plug', {
    contactOhms: 0.002,
    amps: 1,
    volts: 500,
    maxHz: 4e9,
    watts: 100,
    face: 'bnc',
    standard: 'IEC 61169-8',
    source: 'IEC 61169-8 for the form; voltage, power and resistance from memory',
  }),
  ...couple('uhf', 'SO-239 socket', 'PL-259 plug', {
    contactOhms: 0.002,
    amps: 5,
    volts: 500,
    maxHz: 3e8,
    watts: 1500,
    face: 'uhf',
    source: 'UHF connector figures as commonly listed: 500 V peak, to 100 MHz, in use to 300 MHz; the rest from memory',
  }),
  ...couple('n', 'N jack', 'N plug', {
    contactOhms: 0.001,
    amps: 5,
    volts: 1000,
    maxHz: 11e9,
    watts: 1500,
    face: 'n',
    standard: 'IEC 61169-16',
    source: 'IEC 61169-16 for the form; voltage, power and resistance from memory',
  }),
  ...couple('sma', 'SMA jack', 'SMA plug', {
    contactOhms: 0.003,
    amps: 1,
    volts: 335,
    maxHz: 18e9,
    watts: 100,
    face: 'sma',
    standard: 'IEC 61169-15',
    source: 'IEC 61169-15 for the form; voltage, power and resistance from memory',
  }),
  ...couple('f', 'F jack', 'F plug', {
    contactOhms: 0.01,
    amps: 1,
    maxHz: 1e9,
    watts: 5,
    face: 'n',
    standard: 'IEC 61169-24',
    source: 'from memory: IEC 61169-24; receive and a few watts',
  }),
  ...couple('phono', 'phono jack', 'phono plug', {
    contactOhms: 0.01,
    amps: 0.5,
    volts: 30,
    maxHz: 3e7,
    watts: 10,
    face: 'phono',
    standard: 'IEC 60603-14',
    source: 'phono connector data sheet, typical: 30 V, 0.5 A; resistance and power from memory',
  }),
};
