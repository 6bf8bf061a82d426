import {
  formatDbm,
  formatDecimals,
  formatHertz,
  formatImpedance,
  formatLoss,
  formatPercent,
  formatSwr,
  formatVolts,
  formatWatts,
  type RfEnd,
  type RfReport,
  writeCsv,
} from '../../core/index.ts';
import { asJson, type Command, isPressed } from './command.ts';
import { textTable } from './text-table.ts';

export const rf: Command = {
  summary: 'where the transmitter’s power goes: watts, SWR and volts port by port, harmonics, distances to keep',
  forms: ['json', 'csv'],
  options: ['hookup', 'control'],
  run({ station, report, options }) {
    const asked = report.rf.filter((r) => isPressed(options, r));
    if (options.form === 'json') return { text: asJson({ rf: asked }), status: 0 };
    if (options.form === 'csv') return { text: csvOf(asked), status: 0 };
    const body = asked.length > 0 ? asked.map(textOf).join('\n') : 'No control makes a transmitter send.\n';
    return { text: `${station.title}\n\n${body}`, status: 0 };
  },
};

function textOf(r: RfReport): string {
  const rows = r.stages.map((s) => [
    s.by,
    s.by === '' ? '' : formatLoss(s.lossDb) + (s.tolerance ? ` ± ${formatPercent(s.tolerance)}` : ''),
    s.port,
    formatWatts(s.forwardWatts),
    formatWatts(s.reflectedWatts),
    formatSwr(s.swr),
    formatImpedance(s.ohms),
    formatVolts(s.peakVolts),
  ]);
  const head = ['Through', 'Loses', 'To', 'Forward', 'Reflected', 'SWR', 'Impedance', 'Peak'];
  const stairs = r.staircase.map((s, i) => [
    ...[s.name, i === 0 ? '' : formatLoss(s.lossDb), formatDbm(s.dbm), formatWatts(s.watts)],
  ]);
  const most = r.mostWatts === null ? '' : `; it can be set to ${formatWatts(r.mostWatts)}`;
  return [
    `${r.hookupName}, ${r.controlName} pressed: ${r.transmitter} sends ${formatWatts(r.watts)} at ${formatHertz(r.hertz)}${most}.`,
    '',
    textTable(head, rows, 'It ends at once.'),
    textTable(['Level after', 'Loses', 'dBm', 'Watts'], stairs, ''),
    ...r.ends.flatMap(endLines),
    '',
  ].join('\n');
}

const metres = (value: number | null): string => (value === null ? 'no limit' : `${formatDecimals(value, 1)} m`);

function endLines(end: RfEnd): string[] {
  const doubt =
    end.doubt === 'swr'
      ? ' (of its impedance only the SWR is known)'
      : end.doubt === 'beyond'
        ? ' (outside its table of impedances)'
        : '';
  const lines = [`${end.name} takes ${formatWatts(end.watts)} in ${formatImpedance(end.ohms)}${doubt}.`];
  for (const h of end.harmonics) {
    const margins = [margin(h.part97MarginDb, '47 CFR 97.307'), margin(h.categoryAMarginDb, 'ITU-R SM.329 category A')];
    lines.push(`  Harmonic ${h.order}: ${[formatDbm(h.dbm), ...margins.filter((m) => m !== '')].join(', ')}.`);
  }
  if (end.keepM) {
    const { averageWatts, uncontrolled, controlled, nearFieldM } = end.keepM;
    lines.push(
      `  Keep away: ${metres(uncontrolled)} for anyone, ${metres(controlled)} for those who know of it, at ${formatWatts(averageWatts)} on average`,
      `  (47 CFR 1.1310, OET Bulletin 65: far field with reflecting ground, which says little nearer than ${metres(nearFieldM)}).`,
      '  A caution, not an assessment: the local rules decide, and nobody touches an antenna that sends.',
    );
  }
  return lines;
}

/** Nothing where there is no limit, or no harmonic. */
function margin(db: number | null, limit: string): string {
  if (db === null || !Number.isFinite(db)) return '';
  return db >= 0 ? `${db.toFixed(1)} dB inside ${limit}` : `${(-db).toFixed(1)} dB over ${limit}`;
}

function csvOf(reports: readonly RfReport[]): string {
  const head = [
    'Hook-up',
    'Control',
    'Transmitter',
    'Through',
    'Loss dB',
    'Tolerance',
    'Port',
    'Forward W',
    'Reflected W',
    'Net W',
    'SWR',
    'R Ω',
    'X Ω',
    'Peak V',
  ];
  const rows = reports.flatMap((r) =>
    r.stages.map((s) => [
      r.hookupName,
      r.controlName,
      r.transmitter,
      s.by,
      s.lossDb,
      s.tolerance ?? '',
      s.port,
      s.forwardWatts,
      s.reflectedWatts,
      s.netWatts,
      s.swr,
      s.ohms.re,
      s.ohms.im,
      s.peakVolts,
    ]),
  );
  return writeCsv(head, rows);
}
