import { type ReportTable, writeCsv } from '../../../core/index.ts';
import { asJson, type Command, type Given } from '../command.ts';
import type { OptionName } from '../option-table.ts';
import { textTable } from '../text-table.ts';

interface List<Row> {
  readonly summary: string;
  /** What the rows are called in JSON. */
  readonly name: string;
  readonly empty: string;
  /** What it takes beside a hook-up. */
  readonly options?: readonly OptionName[];
  rowsOf(given: Given): readonly Row[];
  tableOf(rows: readonly Row[]): ReportTable;
  /** The table for reading, where that is another one. */
  readableOf?(rows: readonly Row[]): ReportTable;
}

/** A command that prints one table: in columns, as CSV with plain numbers, or its rows as JSON. */
export const listCommand = <Row>(list: List<Row>): Command => ({
  summary: list.summary,
  forms: ['json', 'csv'],
  options: ['hookup', ...(list.options ?? [])],
  run(given) {
    const { station, options } = given;
    const rows = list.rowsOf(given);
    if (options.form === 'json') return { text: asJson({ [list.name]: rows }), status: 0 };
    const { head, rows: values } = (options.form === 'text' && list.readableOf?.(rows)) || list.tableOf(rows);
    if (options.form === 'csv') return { text: writeCsv(head, values), status: 0 };
    const cells = values.map((row) => row.map(String));
    return { text: `${station.title}\n\n${textTable(head, cells, list.empty)}`, status: 0 };
  },
});

/** Whether a cable is plugged in for the hook-up asked for. */
export function isCableAsked({ station, options }: Given, id: string): boolean {
  const { hookup } = options;
  const cable = station.cables.find((c) => c.id === id);
  return hookup === null || (cable?.hookups?.includes(hookup.id) ?? true);
}
