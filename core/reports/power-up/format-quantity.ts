import { formatAmps, formatOhms, formatSwr, formatVolts, formatWatts } from '../../quantity/format.ts';
import { type Expected, openOhms, type PowerUpQuantity } from './sheet.ts';

/** A reading as people write it: `13.80 V`, `open`, `1.2`. */
export function formatQuantity(value: number, quantity: PowerUpQuantity): string {
  if (quantity === 'swr') return formatSwr(value);
  if (quantity === 'ohm') return value >= openOhms ? 'open' : formatOhms(value);
  return { V: formatVolts, A: formatAmps, W: formatWatts }[quantity](value);
}

/** `13.80 V (13.42 to 14.18 V)`, `open (more than 20.0 Ω)`, `6.63 mΩ (up to 508 mΩ)`: what to expect, and from where to where it is right. */
export function formatExpected({ value, from, to, quantity }: Expected): string {
  const middle = value === null ? 'open' : formatQuantity(value, quantity);
  // Nothing is less than no ohms or amperes at all.
  if (to !== null && from <= 0 && (quantity === 'ohm' || quantity === 'A') && (value ?? 0) >= 0)
    return `${middle} (up to ${formatQuantity(to, quantity)})`;
  const low = formatQuantity(from, quantity);
  if (to === null) return `${middle} (more than ${low})`;
  const high = formatQuantity(to, quantity);
  const [number = '', unit] = low.split(' ');
  return `${middle} (${unit !== undefined && high.endsWith(` ${unit}`) ? number : low} to ${high})`;
}
