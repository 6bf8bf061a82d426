import { asPeopleCount } from '../../quantity/as-people-count.ts';
import { portName } from '../../station/parts.ts';
import { ringAt } from '../../station/ring-at.ts';
import type { RingColour } from '../../station/schema/ring-colour.ts';
import type { Cable, CableEnd, Station } from '../../station/schema/schema.ts';
import { ringsOf } from '../cables/rings.ts';
import type { ReportTable } from '../report-table.ts';

/** What is written on the flag at one end of a cable. */
export interface FlagText {
  /** The cable's id. */
  readonly cable: string;
  readonly number: string;
  readonly end: CableEnd;
  /** Unit and port at this end, and at the other. */
  readonly here: string;
  readonly there: string;
  readonly rings: readonly RingColour[];
  /** The ring of the jack at this end, which the plug carries too. */
  readonly jackRing?: RingColour;
}

/** Both flags of every cable, by number; of some cables only where ids are given. */
export function flagsOf(station: Station, ids?: readonly string[]): FlagText[] {
  return station.cables
    .filter((cable) => ids?.includes(cable.id) ?? true)
    .sort((a, b) => asPeopleCount(a.number, b.number))
    .flatMap((cable) => [flagOf(station, cable, 'a'), flagOf(station, cable, 'b')]);
}

function flagOf(station: Station, cable: Cable, end: CableEnd): FlagText {
  const jackRing = ringAt(station, cable[end]);
  return {
    cable: cable.id,
    number: cable.number,
    end,
    here: portName(station, cable[end]),
    there: portName(station, cable[end === 'a' ? 'b' : 'a']),
    rings: ringsOf(station, cable),
    ...(jackRing && { jackRing }),
  };
}

/** The lines of a flag: the number with the ring of this end's jack, this end, and where the other end goes. */
export const linesOf = ({ number, jackRing, here, there }: FlagText): readonly string[] => [
  jackRing ? `${number}, ring ${jackRing}` : number,
  here,
  `→ ${there}`,
];

/** All flags, a row for each. */
export const flagTable = (flags: readonly FlagText[]): ReportTable => ({
  head: ['No.', 'End', 'Here', 'Other end', 'Jack’s ring', 'Rings'],
  rows: flags.map((flag) => [
    flag.number,
    flag.end === 'a' ? 'from' : 'to',
    flag.here,
    flag.there,
    flag.jackRing ?? '',
    flag.rings.join(' '),
  ]),
});
