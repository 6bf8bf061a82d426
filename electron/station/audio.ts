import { type AudioRow, formatDecimals, formatOhms, formatVolts, writeCsv } from '../../core/index.ts';
import { asJson, type Command, isAsked } from './command.ts';
import { textTable } from './text-table.ts';

export const audio: Command = {
  summary: 'what each audio output makes at each input it gets to: volts, impedances, DC on the contact',
  forms: ['json', 'csv'],
  options: ['hookup'],
  run({ station, report, options }) {
    const rows = report.audio.filter((row) => isAsked(options, row.hookup));
    if (options.form === 'json') return { text: asJson({ audio: rows }), status: 0 };
    if (options.form === 'csv') return { text: csvOf(rows), status: 0 };
    return { text: `${station.title}\n\n${textOf(rows)}`, status: 0 };
  },
};

const volts = (value: number | null): string => (value === null ? '' : formatVolts(value));

const textOf = (rows: readonly AudioRow[]): string =>
  textTable(
    ['Hook-up', 'In', 'Output', 'Gives', 'Behind', 'Drives', 'Input', 'Gets', 'dBu', 'Made for', 'Distorts from', 'DC'],
    rows.map((r) => [
      r.hookupName,
      r.moment,
      r.source,
      formatVolts(r.openVolts),
      formatOhms(r.sourceOhms),
      formatOhms(r.loadOhms),
      r.sink,
      formatVolts(r.volts),
      formatDecimals(r.dbu, 1),
      volts(r.fullVolts),
      volts(r.overloadVolts),
      volts(r.dcVolts),
    ]),
    'No audio output reaches an input.',
  );

const csvOf = (rows: readonly AudioRow[]): string =>
  writeCsv(
    ['Hook-up', 'In', 'Output', 'Open V', 'Source Ω', 'Load Ω', 'Input', 'V', 'dBu', 'Full V', 'Overload V', 'DC V'],
    rows.map((r) => [
      r.hookupName,
      r.moment,
      r.source,
      r.openVolts,
      r.sourceOhms,
      Number.isFinite(r.loadOhms) ? r.loadOhms : '',
      r.sink,
      r.volts,
      r.dbu,
      r.fullVolts ?? '',
      r.overloadVolts ?? '',
      r.dcVolts,
    ]),
  );
