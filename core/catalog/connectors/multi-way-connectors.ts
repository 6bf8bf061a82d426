import type { Connector } from '../../station/schema/connector.ts';

interface Shell {
  readonly id: string;
  readonly name: string;
  readonly pins: number;
  /** Pins that are ground by custom; where none is, each unit says what is on which. */
  readonly ground: readonly number[];
  readonly amps: number;
  readonly contactOhms: number;
  readonly standard?: string;
  readonly source: string;
}

const custom = 'what is on which pin belongs to the unit, not to the plug';

/** Round and trapezoid plugs with many pins: the same shell carries different things on different units. */
const shells: readonly Shell[] = [
  {
    id: 'din-5',
    name: 'DIN 5-way',
    pins: 5,
    ground: [2],
    amps: 2,
    contactOhms: 0.01,
    standard: 'IEC 60130-9',
    source: `from memory: IEC 60130-9; pin 2 is the screen by custom; ${custom}`,
  },
  {
    id: 'din-8',
    name: 'DIN 8-way',
    pins: 8,
    ground: [2],
    amps: 2,
    contactOhms: 0.01,
    standard: 'IEC 60130-9',
    source: `from memory: IEC 60130-9; ${custom}`,
  },
  {
    id: 'mini-din-6',
    name: 'mini-DIN 6-way',
    pins: 6,
    ground: [2],
    amps: 1,
    contactOhms: 0.03,
    source: `pin plan of packet radio jacks: 1 audio in, 2 ground, 3 PTT, 4 9600, 5 1200, 6 squelch; ${custom}`,
  },
  {
    id: 'd-sub-9',
    name: 'D-sub 9-way',
    pins: 9,
    ground: [5],
    amps: 3,
    contactOhms: 0.01,
    standard: 'IEC 60807',
    source: `EIA-574: 2 receives, 3 transmits, 5 ground at a computer; ${custom}`,
  },
  {
    id: 'd-sub-15',
    name: 'D-sub 15-way',
    pins: 15,
    ground: [8],
    amps: 3,
    contactOhms: 0.01,
    standard: 'IEC 60807',
    source: `from memory: IEC 60807; ${custom}`,
  },
  {
    id: 'd-sub-25',
    name: 'D-sub 25-way',
    pins: 25,
    ground: [7],
    amps: 3,
    contactOhms: 0.01,
    standard: 'IEC 60807',
    source: `EIA RS-232: 2 transmits, 3 receives, 7 ground at a computer; ${custom}`,
  },
];

const pins = ({ pins: count, ground }: Shell): Connector['contacts'] =>
  Array.from({ length: count }, (_, i) => ({
    id: `pin${i + 1}`,
    name: `pin ${i + 1}`,
    role: ground.includes(i + 1) ? 'return' : 'live',
  }));

function halves(shell: Shell): Record<string, Connector> {
  const { id, name, amps, contactOhms, standard, source } = shell;
  const base = {
    family: id,
    contacts: pins(shell),
    contactOhms,
    amps,
    face: 'multi',
    source,
    ...(standard && { standard }),
  } as const;
  return {
    [`${id}-jack`]: { ...base, name: `${name} socket`, gender: 'jack', mates: [`${id}-plug`] },
    [`${id}-plug`]: { ...base, name: `${name} plug`, gender: 'plug', mates: [`${id}-jack`] },
  };
}

const strip = (count: number): Record<string, Connector> => {
  const contacts = Array.from({ length: count }, (_, i) => ({
    id: `pin${i + 1}`,
    name: `terminal ${i + 1}`,
    role: 'live' as const,
  }));
  const base = {
    family: `terminals-${count}`,
    contacts,
    contactOhms: 0.003,
    amps: 10,
    source: 'common practice: screw terminals, 1 to 3 milliohms from memory',
  };
  return {
    [`terminals-${count}`]: {
      ...base,
      name: `${count} screw terminals`,
      gender: 'jack',
      face: 'posts',
      mates: [`wires-${count}`],
    },
    [`wires-${count}`]: {
      ...base,
      name: `${count} bare wires`,
      gender: 'bare',
      face: 'wire',
      mates: [`terminals-${count}`],
    },
  };
};

/** Plugs with many pins and rows of screw terminals, by id. */
export const multiWayConnectors: Record<string, Connector> = {
  ...Object.assign({}, ...shells.map(halves)),
  ...strip(4),
  ...strip(8),
};
