import type { ReportTable } from '../report-table.ts';
import type { RfReport } from '../rf/rf-report.ts';
import type { BatteryPoint, Budget, DrawnAmps } from './rows.ts';

export type BudgetTableName = keyof typeof drawnTables | 'rf';

const draw = ['Receive A', 'Sending A', 'Average A', 'Peak A'] as const;
const drawn = (row: DrawnAmps) => [row.receiveAmps, row.sendingAmps, row.averageAmps, row.peakAmps];
const fusesIn = (fuses: Budget['branches'][number]['fuses']) =>
  fuses.map(({ name, ratedAmps }) => `${name} ${ratedAmps} A`).join('; ');

const drawnTables = {
  supplies: ({ supplies }: Budget): ReportTable => ({
    head: ['Supply', 'Hook-up', ...draw, 'Rated A', 'Rated peak A', 'Margin A', 'Set V', 'Receive V', 'Sending V'],
    rows: supplies.map((s) => [
      ...[s.name, s.hookupName, ...drawn(s), s.ratedAmps, s.ratedPeakAmps, s.marginAmps],
      ...[s.volts, s.receiveVolts, s.sendingVolts],
    ]),
  }),
  loads: ({ loads }: Budget): ReportTable => ({
    head: ['Load', 'Hook-up', ...draw, 'Receive V', 'Sending V', 'Works from V', 'Works to V', 'Dropped V'],
    rows: loads.map((l) => [
      ...[l.port, l.hookupName, ...drawn(l), l.receiveVolts, l.sendingVolts, l.minV, l.maxV, l.dropVolts],
    ]),
  }),
  branches: ({ branches }: Budget): ReportTable => ({
    head: ['Branch', 'Cable', 'Hook-up', 'Supply', 'Behind', 'Fuses', ...draw, 'Drawn behind it A', 'Feeds'],
    rows: branches.map((b) => [
      ...[b.name, b.number, b.hookupName, b.supply, b.depth, fusesIn(b.fuses), ...drawn(b), b.drawnAmps],
      b.loads.join('; '),
    ]),
  }),
  ways: ({ ways }: Budget): ReportTable => ({
    head: ['Load', 'Hook-up', 'Supply', 'Direction', 'What', 'Part', 'Sending A', 'Dropped V', 'Left V'],
    rows: ways.flatMap((way) => {
      let left = way.supplyVolts;
      return way.parts.map((part) => {
        left -= part.dropVolts;
        const direction = part.back ? 'back' : 'out';
        return [way.port, way.hookupName, way.supply, direction, part.kind, part.name, part.amps, part.dropVolts, left];
      });
    }),
  }),
  fuses: ({ fuses }: Budget): ReportTable => ({
    head: ['Fuse', 'Hook-up', 'Rated A', ...draw, 'Short A', 'Breaks A', 'Guards', 'Wire stands A', 'By'],
    rows: fuses.map((f) => [
      ...[f.name, f.hookupName, f.ratedAmps, ...drawn(f), f.shortAmps ?? '', f.breakingAmps],
      ...[f.guards, f.wireLimitAmps ?? '', f.wireLimitSource],
    ]),
  }),
  wires: ({ wires }: Budget): ReportTable => ({
    head: ['Cable', 'Hook-up', 'Wire', ...draw, 'Stands A', 'By', 'Dropped V'],
    rows: wires.map((w) => [
      ...[w.number, w.hookupName, w.wire, ...drawn(w), w.limitAmps ?? '', w.limitSource, w.dropVolts],
    ]),
  }),
  batteries: ({ batteries }: Budget): ReportTable => ({
    head: [
      ...['Battery', 'Hook-up', 'Ah', 'Charge', 'Sending A', 'Average A', 'Peak A', 'Cut-off V', 'Empty after h'],
      ...['Usable h', 'Quits first', 'Left in it Ah', 'Plan h'],
    ],
    rows: batteries.map((b) => [
      ...[b.name, b.hookupName, b.ampHours, b.charge, b.sendingAmps, b.averageAmps, b.peakAmps, b.cutOffV, b.hours],
      ...[b.usableHours, b.quits ?? '', b.unusableAh, b.planHours],
    ]),
  }),
  courses: ({ batteries }: Budget): ReportTable => ({
    head: ['Battery', 'Hook-up', 'Hours', 'Charge', 'Receive V', 'Sending V'],
    rows: batteries.flatMap((b) =>
      b.course.map((p: BatteryPoint) => [b.name, b.hookupName, p.hours, p.charge, p.receiveVolts, p.sendingVolts]),
    ),
  }),
};

const rfTable = (reports: readonly RfReport[]): ReportTable => ({
  head: ['Transmitter', 'Hook-up', 'Control', 'Part', 'Loss dB', 'Level dBm', 'Power W'],
  rows: reports.flatMap((r) =>
    r.staircase.map((s) => [r.transmitter, r.hookupName, r.controlName, s.name, s.lossDb, s.dbm, s.watts]),
  ),
});

/** Every table of the budget, for `writeCsv`. */
export const budgetTable = (name: BudgetTableName, budget: Budget, rf: readonly RfReport[]): ReportTable =>
  name === 'rf' ? rfTable(rf) : drawnTables[name](budget);
