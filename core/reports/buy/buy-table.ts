import type { ReportTable } from '../report-table.ts';
import type { BuyRow } from './buy-row.ts';

/** What to buy, a row for each thing; metres and pieces as plain numbers. */
export const buyTable = (rows: readonly BuyRow[]): ReportTable => ({
  head: ['What', 'Item', 'Buy', 'Used', 'Unit', 'For'],
  rows: rows.map((row) => [row.group, row.what, row.count, row.used, row.unit, row.for.join(', ')]),
});
