import type { RingColour } from './schema/ring-colour.ts';

/** The colours of rings by their code: letters of IEC 60757, with a word and a printing colour for each. */
export const ringColours = {
  BK: { name: 'black', print: '#111111' },
  BN: { name: 'brown', print: '#7a4a21' },
  RD: { name: 'red', print: '#d2231f' },
  OG: { name: 'orange', print: '#f08a1d' },
  YE: { name: 'yellow', print: '#f6d41c' },
  GN: { name: 'green', print: '#2e8b35' },
  BU: { name: 'blue', print: '#1f5fae' },
  VT: { name: 'violet', print: '#7d3c98' },
  GY: { name: 'grey', print: '#8d949b' },
  WH: { name: 'white', print: '#ffffff' },
  TQ: { name: 'turquoise', print: '#22b5ad' },
  GNYE: { name: 'green and yellow', print: '#2e8b35' },
} as const satisfies Record<RingColour, { name: string; print: string }>;

/** A colour with its letters, never the colour alone: `blue (BU)`; `none` where there is no ring. */
export const ringName = (ring: RingColour | undefined): string =>
  ring ? `${ringColours[ring].name} (${ring})` : 'none';
