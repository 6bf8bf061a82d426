import { asPeopleCount } from '../../quantity/as-people-count.ts';
import { portName } from '../../station/parts.ts';
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
}

/** Both flags of every cable, by number; of some cables only where ids are given. */
export function flagsOf(station: Station, ids?: readonly string[]): FlagText[] {
  return station.cables
    .filter((cable) => ids?.includes(cable.id) ?? true)
    .sort((a, b) => asPeopleCount(a.number, b.number))
    .flatMap((cable) => [flagOf(station, cable, 'a'), flagOf(station, cable, 'b')]);
}

const flagOf = (station: Station, cable: Cable, end: CableEnd): FlagText => ({
  cable: cable.id,
  number: cable.number,
  end,
  here: portName(station, cable[end]),
  there: portName(station, cable[end === 'a' ? 'b' : 'a']),
  rings: ringsOf(station, cable),
});

/** The lines of a flag: the number, this end, and where the other end goes. */
export const linesOf = (flag: FlagText): readonly string[] => [flag.number, flag.here, `→ ${flag.there}`];

/** All flags, a row for each. */
export const flagTable = (flags: readonly FlagText[]): ReportTable => ({
  head: ['No.', 'End', 'Here', 'Other end', 'Rings'],
  rows: flags.map((flag) => [
    flag.number,
    flag.end === 'a' ? 'from' : 'to',
    flag.here,
    flag.there,
    flag.rings.join(' '),
  ]),
});
