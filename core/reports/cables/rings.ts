import { classOf } from '../../station/parts.ts';
import type { RingColour } from '../../station/schema/ring-colour.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import type { PortClass } from '../../station/schema/unit-kind.ts';

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

/** IEC 60062, the colour code of resistors: one colour for each digit from 0. */
const digitColours: readonly RingColour[] = ['BK', 'BN', 'RD', 'OG', 'YE', 'GN', 'BU', 'VT', 'GY', 'WH'];

/** The colour in which each class is drawn; no standard has one for any of them but earth (IEC 60445). */
const classColours: Record<PortClass, RingColour> = {
  dc: 'RD',
  rf: 'BU',
  control: 'BN',
  audio: 'VT',
  data: 'TQ',
  earth: 'GNYE',
};

/**
 * The colour rings of a cable from the plug on: a wide one for its class, then one for each digit of its number by
 * IEC 60062. A number without digits has the first one alone.
 *
 *     ringsOf(station, D12) // ['RD', 'BN', 'RD']
 */
export function ringsOf(station: Station, cable: Cable): RingColour[] {
  const digits = [...cable.number].filter((letter) => letter >= '0' && letter <= '9');
  return [classColours[classOf(station, cable)], ...digits.flatMap((digit) => digitColours[Number(digit)] ?? [])];
}
