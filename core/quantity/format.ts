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
  if (!Number.isFinite(value)) return value > 0 ? `∞ ${unit}` : `– ${unit}`;
  const size = Math.abs(value);
  if (size < smallest / 2) return `0 ${unit}`;
  const [factor, prefix] = prefixes.find(([f]) => size >= f * 0.9995) ?? [1e-9, 'n'];
  const text = toDigits(value / factor, 3);
  return `${text.replace('-', '−')} ${prefix}${unit}`;
}

/** Volts for reading, `13.8 V`, `−0.44 V`; below 0.5 mV it is `0 V`. */
export const formatVolts = (volts: number): string =>
  Math.abs(volts) >= 100 || Math.abs(volts) < 1 ? formatSi(volts, 'V', 1e-3) : `${signed(volts.toFixed(2))} V`;

/** Amperes for reading, `750 mA`, `4.00 A`; below 0.5 µA it is `0 A`. */
export const formatAmps = (amps: number): string => formatSi(amps, 'A', 1e-6);

/** Amperes of a rating or a fuse, as they are printed on it: `7.5 A`, `10 A`. */
export const formatRating = (amps: number): string => `${Number(amps.toPrecision(3))} A`;

/** Watts for reading: `3.02 W`, `501 mW`. */
export const formatWatts = (watts: number): string => formatSi(watts, 'W', 1e-12);

/** A level for reading: `+34.8 dBm`, `−0.4 dBm`. */
export function formatDbm(dbm: number): string {
  if (dbm === Number.NEGATIVE_INFINITY) return 'none';
  return `${dbm > 0 ? '+' : ''}${signed(dbm.toFixed(1))} dBm`;
}

/** Ohms for reading: `62.0 mΩ`, `4.70 kΩ`. */
export const formatOhms = (ohms: number): string => formatSi(ohms, 'Ω', 1e-6);

/** Milliseconds for reading: `14 ms`, `2.5 ms`. */
export const formatMs = (ms: number): string => `${Number(ms.toFixed(2))} ms`;

/** Hours for reading: `13.5 h`; without end `no end`. */
export const formatHours = (hours: number): string => (Number.isFinite(hours) ? `${hours.toFixed(1)} h` : 'no end');

/** A length in metres or in feet and inches: `0.60 m`, `2 ft 0 in`. */
export function formatLength(metres: number, system: 'metric' | 'feet' = 'metric'): string {
  if (system === 'metric') return `${metres.toFixed(2)} m`;
  const inches = Math.round(metres / 0.0254);
  return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
}

/** Hertz for reading: `10.120 MHz`. */
export const formatHertz = (hertz: number): string => `${(hertz / 1e6).toFixed(3)} MHz`;

/** A share for reading: `25 %`. */
export const formatPercent = (share: number): string => `${Number((share * 100).toFixed(share < 0.0995 ? 1 : 0))} %`;

const signed = (text: string): string => text.replace('-', '−');

/** `0.15 to 5 s`, `within 0.1 s`; `after 0.75 s or never` where it may last for good. */
export function formatWithin({ from, to }: { readonly from: number; readonly to: number | null }): string {
  if (to === null) return `after ${from} s or never`;
  return from === 0 ? `within ${to} s` : `${from} to ${to} s`;
}
