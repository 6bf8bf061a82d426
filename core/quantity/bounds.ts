import type { QuantityKind } from './parse.ts';

/**
 * The least and the most that a quantity can be in a document. They keep a slip of the finger, or a damaged file, from
 * becoming a result, and are wider than any station.
 */
export const quantityBounds: Readonly<Record<QuantityKind, { readonly least: number; readonly most: number }>> = {
  V: { least: -100_000, most: 100_000 },
  A: { least: 0, most: 100_000 },
  W: { least: 0, most: 1e6 },
  dBm: { least: -250, most: 120 },
  dB: { least: -200, most: 300 },
  ohm: { least: 0, most: 1e12 },
  m: { least: 0, most: 10_000 },
  ms: { least: 0, most: 600_000 },
  Hz: { least: 0, most: 1e12 },
  number: { least: -1e12, most: 1e12 },
};
