import type { CableRow } from '../report-rows.ts';
import type { ReportTable } from '../report-table.ts';

/** The cable list with all its columns; lengths in metres as plain numbers. */
export const cableTable = (rows: readonly CableRow[]): ReportTable => ({
  head: [
    'No.',
    'From',
    'To',
    'Plug from',
    'Plug to',
    'Cable',
    'Conductors',
    'Length m',
    'Fuse',
    'Rings',
    'Wiring',
    'Adapters',
    'Hook-ups',
    'Status',
    'Number locked',
    'Note',
  ],
  rows: rows.map((row) => [
    row.number,
    row.from,
    row.to,
    row.fromPlug,
    row.toPlug,
    row.kind,
    row.conductors,
    row.lengthM,
    row.fuse,
    row.rings.join(' '),
    row.wiring,
    row.adapters,
    row.hookups.join('; '),
    row.status,
    row.numberLocked ? 'yes' : '',
    row.note,
  ]),
});
