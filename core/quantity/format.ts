import type { Complex } from './complex.ts';

/** What is said of a figure that is none. Whoever reads it never sees what a computer calls it. */
const notKnown = 'not known';

/** The writer of a figure, for any number: what has no end and what is not a number get a word. */
const forAny =
  (write: (value: number) => string, words: { readonly endless?: string; readonly below?: string } = {}) =>
  (value: number): string => {
    if (Number.isFinite(value)) return write(value);
    if (Number.isNaN(value)) return notKnown;
    const { endless = 'endless', below = endless } = words;
    return value > 0 ? endless : below;
  };

const prefixes: readonly (readonly [factor: number, prefix: string])[] = [
  [1e9, 'G'],
  [1e6, 'M'],
  [1e3, 'k'],
  [1, ''],
  [1e-3, 'm'],
  [1e-6, 'µ'],
  [1e-9, 'n'],
];

/** A number to `digits` significant digits without exponent: 0.12 (3 digits) gives `0.120`. */
function toDigits(value: number, digits: number): string {
  if (value === 0) return '0';
  // Rounded first: 0.9996 has to become 1.00, not 1.000.
  const rounded = Number(value.toPrecision(digits));
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(rounded)));
  return rounded.toFixed(Math.min(12, Math.max(0, decimals)));
}

/** A value with its unit and an SI prefix, three significant digits: `formatSi(0.12, 'A')` gives `120 mA`. */
function formatSi(value: number, unit: string, smallest: number): string {
  const size = Math.abs(value);
  if (size < smallest / 2) return `0 ${unit}`;
  const [factor, prefix] = prefixes.find(([f]) => size >= f * 0.9995) ?? [1e-9, 'n'];
  return `${signed(toDigits(value / factor, 3))} ${prefix}${unit}`;
}

const signed = (text: string): string => text.replace('-', '−');

/** A bare number with all its digits. */
export const formatNumber = forAny(String);

/** A bare number with so many decimals, `0.20`, where its unit stands in the sentence. */
export const formatDecimals = (value: number, decimals: number): string => forAny((v) => v.toFixed(decimals))(value);

/** Volts for reading, `13.8 V`, `−0.44 V`; below 0.5 mV it is `0 V`. */
export const formatVolts = forAny((volts) =>
  Math.abs(volts) >= 100 || Math.abs(volts) < 1 ? formatSi(volts, 'V', 1e-3) : `${signed(volts.toFixed(2))} V`,
);

/** Volts that are lost on a way, all in one unit to be compared: `20.4 mV`. */
export const formatMillivolts = forAny((volts) => `${signed((volts * 1000).toFixed(1))} mV`);

/** Amperes for reading, `750 mA`, `4.00 A`; below 0.5 µA it is `0 A`. */
export const formatAmps = forAny((amps) => formatSi(amps, 'A', 1e-6));

/** Amperes of a rating or a fuse, as they are printed on it: `7.5 A`, `10 A`. */
export const formatRating = forAny((amps) => `${Number(amps.toPrecision(3))} A`);

/** Ampere-hours for reading: `4.2 Ah`. */
export const formatAmpHours = forAny((ampHours) => `${ampHours.toFixed(1)} Ah`);

/** Watts for reading: `3.02 W`, `501 mW`. */
export const formatWatts = forAny((watts) => formatSi(watts, 'W', 1e-12));

/** A level for reading: `+34.8 dBm`, `−0.4 dBm`; of no power `none`. */
export const formatDbm = forAny((dbm) => `${dbm > 0 ? '+' : ''}${signed(dbm.toFixed(1))} dBm`, { below: 'none' });

/** What is lost for reading: `0.20 dB`, a gain as `−11.30 dB`; where nothing comes out `all`. */
export const formatLoss = forAny((db) => `${signed(db.toFixed(2))} dB`, { endless: 'all', below: 'endless' });

/** Ohms for reading: `62.0 mΩ`, `4.70 kΩ`; of what is open `open`. */
export const formatOhms = forAny((ohms) => formatSi(ohms, 'Ω', 1e-6), { endless: 'open' });

/** Ohms and reactance for reading: `50.0 + j0 Ω`, `35.2 − j12.0 Ω`; of an open end `open`. */
export function formatImpedance({ re, im }: Complex): string {
  if (!Number.isFinite(re)) return formatOhms(Math.abs(re));
  if (!Number.isFinite(im)) return formatOhms(Math.abs(im));
  return `${signed(toDigits(re, 3))} ${im < 0 ? '−' : '+'} j${toDigits(Math.abs(im), 3)} Ω`;
}

/** An SWR for reading: `1.52`; more than a meter shows is `over 99`. */
export const formatSwr = forAny((swr) => (swr > 99 ? 'over 99' : swr.toFixed(2)), { endless: 'over 99' });

/** Milliseconds for reading: `14 ms`, `2.5 ms`. */
export const formatMs = forAny((ms) => `${Number(ms.toFixed(2))} ms`);

/** Hours for reading: `13.5 h`; without end `no end`. */
export const formatHours = forAny((hours) => `${hours.toFixed(1)} h`, { endless: 'no end' });

/** A length in metres or in feet and inches: `0.60 m`, `2 ft 0 in`. */
export function formatLength(metres: number, system: 'metric' | 'feet' = 'metric'): string {
  return forAny((length) => {
    if (system === 'metric') return `${length.toFixed(2)} m`;
    const inches = Math.round(length / 0.0254);
    return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
  })(metres);
}

/** Hertz for reading: `10.120 MHz`. */
export const formatHertz = forAny((hertz) => `${(hertz / 1e6).toFixed(3)} MHz`);

/** A share for reading: `25 %`. */
export const formatPercent = forAny((share) => `${Number((share * 100).toFixed(share < 0.0995 ? 1 : 0))} %`);

/** `0.15 to 5 s`, `within 0.1 s`; `after 0.75 s or never` where it may last for good. */
export function formatWithin({ from, to }: { readonly from: number; readonly to: number | null }): string {
  const [first, last] = [formatNumber(from), to === null ? null : formatNumber(to)];
  if (last === null) return `after ${first} s or never`;
  return from === 0 ? `within ${last} s` : `${first} to ${last} s`;
}
