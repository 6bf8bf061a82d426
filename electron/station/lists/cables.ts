import { cableTable, listCables } from '../../../core/index.ts';
import { isCableAsked, listCommand } from './list-command.ts';

export const cables = listCommand({
  summary: 'the cable list',
  name: 'cables',
  empty: 'No cable is drawn yet.',
  rowsOf: (given) => listCables(given.station).filter((row) => isCableAsked(given, row.id)),
  tableOf: cableTable,
  readableOf: (rows) => {
    const { head, rows: cells } = cableTable(rows);
    const lengthAt = head.indexOf('Length m');
    return { head, rows: cells.map((row) => row.map((cell, i) => (i === lengthAt ? Number(cell).toFixed(2) : cell))) };
  },
});
