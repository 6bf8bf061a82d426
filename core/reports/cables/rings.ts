import { classOf } from '../../station/parts.ts';
import type { RingColour } from '../../station/schema/ring-colour.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import type { PortClass } from '../../station/schema/unit-kind.ts';

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
