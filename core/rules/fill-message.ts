import {
  formatAmps,
  formatDbm,
  formatLength,
  formatMs,
  formatNumber,
  formatOhms,
  formatPercent,
  formatRating,
  formatVolts,
  formatWatts,
} from '../quantity/format.ts';

const writers: Record<string, (value: number) => string> = {
  V: formatVolts,
  A: formatAmps,
  W: formatWatts,
  dBm: formatDbm,
  ms: formatMs,
  Ω: formatOhms,
  m: (metres) => formatLength(metres),
  '%': formatPercent,
  rated: formatRating,
};

/** A sentence with its placeholders filled; one without a value stays as it is, for the tests to find. */
export function fillMessage(template: string, values: Readonly<Record<string, number | string>>): string {
  return template.replace(/\{(\w+)(?: ([^}]+))?\}/g, (whole, name: string, unit: string | undefined) => {
    const value = values[name];
    if (value === undefined) return whole;
    if (typeof value === 'string') return value;
    return unit === undefined ? formatNumber(value) : (writers[unit]?.(value) ?? whole);
  });
}
