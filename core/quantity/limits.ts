import type { QuantityKind } from './parse-quantity.ts';

/**
 * What a figure can be: a row of the one table that the file's schema, a unit's own figures, the fields of the screen
 * and the kind editor are all judged by.
 */
export interface Limit {
  /** What such figures are, as the sentence about them begins. */
  readonly name: string;
  /** A share is written as 0.4 in a file and as 40 % on the screen. */
  readonly unit: QuantityKind | 'share';
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
  /** Typed with either sign by custom and meant with this one: an isolation of −30 dB is one of 30 dB. */
  readonly sign?: 'plus' | 'minus';
}

type More = Pick<Limit, 'whole' | 'sign'>;

const row = (name: string, unit: Limit['unit'], least: number, most: number, more: More = {}): Limit => ({
  name,
  unit,
  least,
  most,
  ...more,
});

/**
 * By figure, the least and the most that it can be in a document. They keep a slip of the finger, or a damaged file,
 * from becoming a result, and are wider than any station.
 */
export const limits = {
  volts: row('Volts', 'V', -100_000, 100_000),
  amps: row('Amperes', 'A', 0, 100_000),
  /** A fuse of no amperes would be none. */
  fuseAmps: row('Ratings of a fuse in amperes', 'A', 0.001, 100_000),
  watts: row('Watts', 'W', 0, 1e6),
  ohms: row('Ohms', 'ohm', 0, 1e12),
  reactance: row('Ohms of reactance', 'ohm', -1e6, 1e6),
  hertz: row('Hertz', 'Hz', 0, 1e12),
  metres: row('Metres', 'm', 0, 10_000),
  milliseconds: row('Milliseconds', 'ms', 0, 600_000),
  seconds: row('Seconds', 'number', 0, 86_400),
  celsius: row('Degrees of the air', 'number', -40, 100),
  insulationCelsius: row('Degrees that an insulation is marked for', 'number', 40, 300),
  share: row('Shares', 'share', 0, 1),
  efficiency: row('Efficiencies', 'share', 0.01, 1),
  amount: row('Amperes, watts or ohms that a load takes', 'number', 0, 1e9),

  dbm: row('Levels in dBm', 'dBm', -250, 120),
  /** Of a path it is a loss, or a gain where it is negative. */
  decibels: row('Decibels', 'dB', -200, 300),
  passiveLossDb: row('Losses in dB', 'dB', 0, 300, { sign: 'plus' }),
  isolationDb: row('Isolations in dB', 'dB', 0, 300, { sign: 'plus' }),
  couplingDb: row('Losses from antenna to antenna in dB', 'dB', 0, 200, { sign: 'plus' }),
  harmonicsDbc: row('Harmonics in dB beside the carrier', 'dB', -200, 0, { sign: 'minus' }),
  swr: row('Standing wave ratios', 'number', 1, 1000),

  ampHours: row('Ampere-hours', 'number', 0.01, 100_000),
  peukert: row('Peukert’s exponents', 'number', 1, 2),
  diodeVolts: row('Volts across a diode', 'V', 0.05, 100),
  diodeAmps: row('Amperes through a diode', 'A', 1e-6, 10_000),
  emission: row('Emission coefficients', 'number', 0.5, 4),
  dits: row('Dits that a switch is held for', 'number', 0, 100),
  wordSpaces: row('Word spaces that a switch is held for', 'number', 0, 10),

  awg: row('Wire gauges (AWG)', 'number', -3, 40, { whole: true }),
  mm2: row('Wire areas in mm²', 'number', 0.01, 500),
  cores: row('Cores of a cable', 'number', 1, 64, { whole: true }),
  velocityFactor: row('Velocity factors', 'number', 0.1, 1),
  coaxMHz: row('Megahertz of a cable’s loss', 'number', 1e-6, 100_000),
  coaxDb: row('Losses of a cable in dB per 100 m', 'number', 1e-6, 10_000),

  planHertz: row('Frequencies to send on', 'Hz', 1000, 1e12),
  speedWpm: row('Words a minute', 'number', 1, 100),
  hoursPerDay: row('Hours a day', 'number', 0, 24),
  bundled: row('Loaded conductors in a bundle', 'number', 1, 200, { whole: true }),
  metresPerUnit: row('Metres for each unit of the drawing', 'number', 1e-6, 10),
  coordinate: row('Places on the paper', 'number', -1_000_000, 1_000_000),
  paperSize: row('Sizes on the paper', 'number', 1, 100_000),
  number: row('Numbers', 'number', -1e12, 1e12),
  reading: row('Readings', 'number', -1e12, 1e12),
} as const satisfies Record<string, Limit>;

const grouped = new Intl.NumberFormat('en-US', { maximumFractionDigits: 9 });

/** `10,000`, `1e12`: a limit as it is told. */
const plain = (n: number): string =>
  Math.abs(n) >= 1e9 ? n.toExponential().replace('e+', 'e') : grouped.format(n).replace('-', '−');

/** Why a figure can't be one of these, as a sentence; undefined where it can. */
export function limitProblem(value: number, limit: Limit, say: (n: number) => string = plain): string | undefined {
  const { name, least, most } = limit;
  if (value >= least && value <= most) return undefined;
  if (Number.isNaN(value)) return 'It has to be a number.';
  const range = `${name} are ${say(least)} to ${say(most)}.`;
  if (value < least) return `It has to be at least ${say(least)}. ${range}`;
  return `It has to be at most ${say(most)}. ${range}`;
}

/** A figure as a document keeps it: with the sign that it is meant with, whole where it counts something, never −0. */
export function asKept(value: number, { sign, whole }: Limit): number {
  const signed = sign === undefined ? value : sign === 'plus' ? Math.abs(value) : -Math.abs(value);
  return (whole ? Math.round(signed) : signed) + 0;
}
