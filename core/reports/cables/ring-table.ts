import { asPeopleCount } from '../../quantity/as-people-count.ts';
import { kindOf, portName } from '../../station/parts.ts';
import { ringAt } from '../../station/ring-at.ts';
import { ringName } from '../../station/ring-colours.ts';
import type { PortRef, Station } from '../../station/schema/schema.ts';
import type { ReportTable } from '../report-table.ts';

/** Every jack that has a ring, and the cables whose plugs carry it too; a row for each jack, unit by unit. */
export const ringTable = (station: Station): ReportTable => ({
  head: ['Jack', 'Ring', 'Plug of'],
  rows: station.units.flatMap((unit) =>
    kindOf(station, unit).ports.flatMap(({ id }) => {
      const ref = { unit: unit.id, port: id };
      const ring = ringAt(station, ref);
      return ring ? [[portName(station, ref), ringName(ring), numbersAt(station, ref).join(', ')]] : [];
    }),
  ),
});

const numbersAt = (station: Station, { unit, port }: PortRef): string[] =>
  station.cables
    .filter(({ a, b }) => [a, b].some((end) => end.unit === unit && end.port === port))
    .map(({ number }) => number)
    .sort(asPeopleCount);
