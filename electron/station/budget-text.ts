import {
  type Budget,
  formatAmpHours,
  formatAmps,
  formatHours,
  formatMillivolts,
  formatPercent,
  formatRating,
  formatVolts,
  formatWithin,
} from '../../core/index.ts';
import { textTable } from './text-table.ts';

/** The budget as tables to read. */
export function budgetText(budget: Budget): string {
  const parts = [
    supplies(budget),
    loads(budget),
    ...(budget.branches.length > 0 ? [branches(budget)] : []),
    ...(budget.ways.length > 0 ? [ways(budget)] : []),
    fuses(budget),
    wires(budget),
    ...(budget.batteries.length > 0 ? [batteries(budget)] : []),
  ];
  return `${parts.join('\n')}\nAn estimate from the figures entered. Mains wiring and licences: by the local rules.\n`;
}

const supplies = ({ supplies }: Budget): string =>
  textTable(
    ['Supply', 'Hook-up', 'Receive', 'Sending', 'Average', 'Peak', 'Rated', 'Margin', 'At its posts'],
    supplies.map((s) => [
      ...[s.name, s.hookupName, formatAmps(s.receiveAmps), formatAmps(s.sendingAmps), formatAmps(s.averageAmps)],
      ...[formatAmps(s.peakAmps), formatRating(s.ratedAmps), formatAmps(s.marginAmps), formatVolts(s.sendingVolts)],
    ]),
    'No supply is drawn yet.',
  );

const loads = ({ loads }: Budget): string =>
  textTable(
    ['Load', 'Hook-up', 'Receive', '', 'Sending', '', 'Peak', 'Works', 'Dropped'],
    loads.map((l) => [
      ...[l.port, l.hookupName, formatVolts(l.receiveVolts), formatAmps(l.receiveAmps)],
      ...[formatVolts(l.sendingVolts), formatAmps(l.sendingAmps), formatAmps(l.peakAmps)],
      ...[`${l.minV}–${l.maxV} V`, formatVolts(l.dropVolts)],
    ]),
    'No load is drawn yet.',
  );

const branches = ({ branches }: Budget): string =>
  textTable(
    ['Branch', 'Cable', 'Hook-up', 'Fuse', 'Receive', 'Sending', 'Average', 'Peak', 'Feeds'],
    branches.map((b) => [
      ...['  '.repeat(b.depth) + b.name, b.number, b.hookupName],
      b.fuses.map(({ ratedAmps }) => formatRating(ratedAmps)).join(', '),
      ...[formatAmps(b.receiveAmps), formatAmps(b.sendingAmps), formatAmps(b.averageAmps), formatAmps(b.peakAmps)],
      b.loads.join(', '),
    ]),
    '',
  );

/** A line for the supply, one for each part, one for what is left. */
const ways = ({ ways }: Budget): string =>
  textTable(
    ['Way while sending', 'Hook-up', '', 'Carries', 'Drops'],
    ways.flatMap((way) => [
      [`${way.supply} to ${way.port}`, way.hookupName, 'gives', '', formatVolts(way.supplyVolts)],
      ...way.parts.map((p) => [
        ...[`  ${p.name}`, '', p.back ? 'back' : 'out', formatAmps(p.amps), formatMillivolts(p.dropVolts)],
      ]),
      ['  All of them', '', '', '', formatMillivolts(way.dropVolts)],
      ['  The load', '', 'gets', '', formatVolts(way.loadVolts)],
    ]),
    '',
  );

const fuses = ({ fuses }: Budget): string =>
  textTable(
    [
      ...['Fuse', 'Hook-up', 'Rated', 'Receive', 'Sending', 'Peak', 'Share', 'Opens', 'Breaks', 'Short', 'Guards'],
      ...['Wire stands', 'By'],
    ],
    fuses.map((f) => [
      ...[f.name, f.hookupName, formatRating(f.ratedAmps), formatAmps(f.receiveAmps), formatAmps(f.sendingAmps)],
      ...[formatAmps(f.peakAmps), formatPercent(f.share), f.opensInS ? formatWithin(f.opensInS) : 'holds'],
      ...[formatRating(f.breakingAmps), f.shortAmps === null ? '' : formatRating(f.shortAmps), f.guards],
      ...[f.wireLimitAmps === null ? '' : formatRating(f.wireLimitAmps), f.wireLimitSource],
    ]),
    'No fuse is drawn yet.',
  );

const wires = ({ wires }: Budget): string =>
  textTable(
    ['Wire', 'Hook-up', 'Gauge', 'Receive', 'Sending', 'Peak', 'Drops', 'Stands', 'By'],
    wires.map((w) => [
      ...[w.number, w.hookupName, w.wire, formatAmps(w.receiveAmps), formatAmps(w.sendingAmps)],
      ...[formatAmps(w.peakAmps), formatVolts(w.dropVolts)],
      ...[w.limitAmps === null ? '' : formatRating(w.limitAmps), w.limitSource],
    ]),
    'No power cable is drawn yet.',
  );

const batteries = ({ batteries }: Budget): string =>
  textTable(
    [
      ...['Battery', 'Hook-up', 'Charge', 'Average', 'Sending', 'Peak', 'Empty after', 'Usable', 'Quits first'],
      ...['Left in it', 'Plan'],
    ],
    batteries.map((b) => [
      ...[b.name, b.hookupName, `${formatPercent(b.charge)} of ${b.ampHours} Ah`, formatAmps(b.averageAmps)],
      ...[formatAmps(b.sendingAmps), formatAmps(b.peakAmps), formatHours(b.hours), formatHours(b.usableHours)],
      ...[b.quits ?? '', formatAmpHours(b.unusableAh), formatHours(b.planHours)],
    ]),
    '',
  );
