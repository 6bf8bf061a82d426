import type { ReportTable } from '../report-table.ts';
import type { MakeRow } from './what-to-make.ts';

/** What to make, a row for each cable; lengths in metres as plain numbers. */
export const makeTable = (rows: readonly MakeRow[]): ReportTable => ({
  head: [
    'No.',
    'Cable',
    'Conductors',
    'Cut m',
    'From',
    'Plug from',
    'Adapters from',
    'To',
    'Plug to',
    'Adapters to',
    'Fuse',
    'Holder',
    'Fuse at m',
    'Sleeves over cable',
    'Sleeves over cores',
    'Flags',
    'Wiring',
    'Screen',
  ],
  rows: rows.map((row) => [
    row.number,
    row.kind,
    row.conductors,
    row.cutM,
    ...row.ends.flatMap(({ at, plug, adapters }) => [at, plug, adapters.join(', then ')]),
    row.fuse?.name ?? '',
    row.fuse?.holder ?? '',
    row.fuse?.atM ?? '',
    row.heatShrink.overCable,
    row.heatShrink.overCores,
    row.flags,
    row.wiring.map(({ from, to }) => `${from} to ${to}`).join(', '),
    row.screen,
  ]),
});
