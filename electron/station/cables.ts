import { type CableRow, writeCsv } from '../../core/index.ts';
import { asJson, type Command } from './command.ts';
import { textTable } from './table.ts';

const head = [
  'No.',
  'From',
  'To',
  'Plug',
  'Plug',
  'Cable',
  'Length m',
  'Fuse',
  'Wiring',
  'Adapters',
  'Hook-ups',
  'Status',
  'Note',
];

export const cables: Command = {
  summary: 'the cable list',
  forms: ['json', 'csv'],
  run({ station, report, options }) {
    const wanted = options.hookup;
    const isIn = (row: CableRow) => wanted === null || row.hookups.length === 0 || row.hookups.includes(wanted.name);
    const rows = report.cables.filter(isIn);
    if (options.form === 'json') return { text: asJson({ cables: rows }), status: 0 };
    const cells = rows.map(cellsOf);
    const text =
      options.form === 'csv'
        ? writeCsv(head, rows.map(valuesOf))
        : `${station.title}\n\n${textTable(head, cells, 'No cable is drawn yet.')}`;
    return { text, status: 0 };
  },
};

const valuesOf = (row: CableRow): (string | number)[] => [
  row.number,
  row.from,
  row.to,
  row.fromPlug,
  row.toPlug,
  row.kind,
  row.lengthM,
  row.fuse,
  row.wiring,
  row.adapters,
  row.hookups.join('; '),
  row.status,
  row.note,
];

const cellsOf = (row: CableRow): string[] =>
  valuesOf(row).map((value) => (typeof value === 'number' ? value.toFixed(2) : value));
