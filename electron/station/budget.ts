import {
  type Budget,
  formatAmps,
  formatHours,
  formatPercent,
  formatRating,
  formatVolts,
  formatWithin,
  writeCsv,
} from '../../core/index.ts';
import { asJson, type Command, isAsked } from './command.ts';
import { textTable } from './table.ts';

export const budget: Command = {
  summary: 'who draws what: supplies, loads, fuses and wires in receive and sending',
  forms: ['json', 'csv'],
  run({ station, report, options }) {
    const keep = <T extends { hookup: string }>(rows: readonly T[]) =>
      rows.filter((row) => isAsked(options, row.hookup));
    const { supplies, loads, fuses, wires, batteries } = report.budget;
    const kept: Budget = {
      supplies: keep(supplies),
      loads: keep(loads),
      fuses: keep(fuses),
      wires: keep(wires),
      batteries: keep(batteries),
    };
    if (options.form === 'json') return { text: asJson(kept), status: 0 };
    return { text: options.form === 'csv' ? csvOf(kept) : `${station.title}\n\n${textOf(kept)}`, status: 0 };
  },
};

function textOf({ supplies, loads, fuses, wires, batteries }: Budget): string {
  const parts = [
    textTable(
      ['Supply', 'Hook-up', 'Receive', 'Sending', 'Average', 'Rated', 'Margin', 'At its posts'],
      supplies.map((s) => [
        s.name,
        s.hookupName,
        formatAmps(s.receiveAmps),
        formatAmps(s.sendingAmps),
        formatAmps(s.averageAmps),
        formatRating(s.ratedAmps),
        formatAmps(s.marginAmps),
        formatVolts(s.sendingVolts),
      ]),
      'No supply is drawn yet.',
    ),
    textTable(
      ['Load', 'Hook-up', 'Receive', '', 'Sending', '', 'Works', 'Dropped'],
      loads.map((l) => [
        l.port,
        l.hookupName,
        formatVolts(l.receiveVolts),
        formatAmps(l.receiveAmps),
        formatVolts(l.sendingVolts),
        formatAmps(l.sendingAmps),
        `${l.minV}–${l.maxV} V`,
        formatVolts(l.dropVolts),
      ]),
      'No load is drawn yet.',
    ),
    textTable(
      [
        'Fuse',
        'Hook-up',
        'Rated',
        'Receive',
        'Sending',
        'Share',
        'Opens',
        'Breaks',
        'Short',
        'Guards',
        'Wire stands',
        'By',
      ],
      fuses.map((f) => [
        f.name,
        f.hookupName,
        formatRating(f.ratedAmps),
        formatAmps(f.receiveAmps),
        formatAmps(f.sendingAmps),
        formatPercent(f.share),
        f.opensInS ? formatWithin(f.opensInS) : 'holds',
        formatRating(f.breakingAmps),
        f.shortAmps === null ? '' : formatRating(f.shortAmps),
        f.guards,
        f.wireLimitAmps === null ? '' : formatRating(f.wireLimitAmps),
        f.wireLimitSource,
      ]),
      'No fuse is drawn yet.',
    ),
    textTable(
      ['Wire', 'Hook-up', 'Gauge', 'Receive', 'Sending', 'Drops', 'Stands', 'By'],
      wires.map((w) => [
        w.number,
        w.hookupName,
        w.wire,
        formatAmps(w.receiveAmps),
        formatAmps(w.sendingAmps),
        formatVolts(w.dropVolts),
        w.limitAmps === null ? '' : formatRating(w.limitAmps),
        w.limitSource,
      ]),
      'No power cable is drawn yet.',
    ),
    ...(batteries.length > 0 ? [batteryTable(batteries)] : []),
  ];
  return `${parts.join('\n')}\nAn estimate from the figures entered. Mains wiring and licences: by the local rules.\n`;
}

const batteryTable = (batteries: Budget['batteries']): string =>
  textTable(
    [
      'Battery',
      'Hook-up',
      'Charge',
      'Average',
      'Sending',
      'Empty after',
      'Usable',
      'Quits first',
      'Left in it',
      'Plan',
    ],
    batteries.map((b) => [
      b.name,
      b.hookupName,
      `${formatPercent(b.charge)} of ${b.ampHours} Ah`,
      formatAmps(b.averageAmps),
      formatAmps(b.sendingAmps),
      formatHours(b.hours),
      formatHours(b.usableHours),
      b.quits ?? '',
      `${b.unusableAh.toFixed(1)} Ah`,
      formatHours(b.planHours),
    ]),
    '',
  );

/** One table for a spreadsheet: a row for each supply, load, fuse, wire and battery; amperes, volts and hours as plain numbers. */
function csvOf({ supplies, loads, fuses, wires, batteries }: Budget): string {
  const head = [
    'What',
    'Name',
    'Hook-up',
    'Receive A',
    'Sending A',
    'Average A',
    'Rated A',
    'Receive V',
    'Sending V',
    'Drop V',
    'Usable hours',
  ];
  return writeCsv(head, [
    ...supplies.map((s) => [
      'supply',
      s.name,
      s.hookupName,
      s.receiveAmps,
      s.sendingAmps,
      s.averageAmps,
      s.ratedAmps,
      s.receiveVolts,
      s.sendingVolts,
      '',
      '',
    ]),
    ...loads.map((l) => [
      'load',
      l.port,
      l.hookupName,
      l.receiveAmps,
      l.sendingAmps,
      l.averageAmps,
      '',
      l.receiveVolts,
      l.sendingVolts,
      l.dropVolts,
      '',
    ]),
    ...fuses.map((f) => ['fuse', f.name, f.hookupName, f.receiveAmps, f.sendingAmps, '', f.ratedAmps, '', '', '', '']),
    ...wires.map((w) => [
      'wire',
      w.number,
      w.hookupName,
      w.receiveAmps,
      w.sendingAmps,
      '',
      w.limitAmps ?? '',
      '',
      '',
      w.dropVolts,
      '',
    ]),
    ...batteries.map((b) => [
      'battery',
      b.name,
      b.hookupName,
      '',
      b.sendingAmps,
      b.averageAmps,
      '',
      '',
      '',
      '',
      Number.isFinite(b.usableHours) ? b.usableHours : '',
    ]),
  ]);
}
