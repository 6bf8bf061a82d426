import { formatAmps, formatDecimals, formatOhms, formatSwr, formatVolts, formatWatts } from '../../quantity/format.ts';
import { type Expected, openOhms, type PowerUpQuantity } from './sheet.ts';

/** A reading as people write it: `13.80 V`, `open`, `1.2`. */
export function formatQuantity(value: number, quantity: PowerUpQuantity): string {
  if (quantity === 'swr') return formatSwr(value);
  // A hand meter shows tenths of an ohm, no milliohms.
  if (quantity === 'ohm' && value < 1) return `${formatDecimals(value, 2)} Ω`;
  if (quantity === 'ohm') return value >= openOhms ? 'open' : formatOhms(value);
  return { V: formatVolts, A: formatAmps, W: formatWatts }[quantity](value);
}

/** Nothing, as far as a hand meter shows it. */
const nothing: Partial<Record<PowerUpQuantity, number>> = { V: 0.05, ohm: 0.5 };

/**
 * `13.80 V (13.42 to 14.18 V)`, `open (more than 20.0 Ω)`, `under 0.50 Ω`, `0 A (up to 2.00 mA)`: what to expect, and from
 * where to where it is right.
 */
export function formatExpected({ value, from, to, quantity }: Expected): string {
  if (quantity === 'ohm' && from === 0 && to === null) return 'to be written down';
  // With all off electronics show some ohms: only a short is wrong.
  if (value === null && to === null && from < 1000) return `more than ${formatQuantity(from, quantity)}`;
  const middle = value === null ? 'open' : formatQuantity(value, quantity);
  if (to !== null && from <= 0 && value !== null && Math.abs(value) < (nothing[quantity] ?? 0))
    return `under ${formatQuantity(to, quantity)}`;
  // Nothing is less than no ohms, amperes or drop at all.
  const isOneSided = quantity === 'V' ? from === 0 : quantity === 'ohm' || quantity === 'A';
  if (to !== null && from <= 0 && isOneSided && (value ?? 0) >= 0)
    return `${middle} (up to ${formatQuantity(to, quantity)})`;
  const low = formatQuantity(from, quantity);
  if (to === null) return `${middle} (more than ${low})`;
  const high = formatQuantity(to, quantity);
  const [number = '', unit] = low.split(' ');
  return `${middle} (${unit !== undefined && high.endsWith(` ${unit}`) ? number : low} to ${high})`;
}
