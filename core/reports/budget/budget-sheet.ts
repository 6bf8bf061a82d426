import type { RfReport } from '../rf/rf-report.ts';
import type { BatteryPoint, Budget, Draw } from './rows.ts';

/** A table for a spreadsheet: plain numbers, their units in the head. */
export interface Sheet {
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

export type BudgetSheetName = keyof typeof drawnSheets | 'rf';

const draw = ['Receive A', 'Sending A', 'Average A', 'Peak A'] as const;
const drawn = (row: Draw) => [row.receiveAmps, row.sendingAmps, row.averageAmps, row.peakAmps];
const fusesIn = (fuses: Budget['branches'][number]['fuses']) =>
  fuses.map(({ name, ratedAmps }) => `${name} ${ratedAmps} A`).join('; ');

const drawnSheets = {
  supplies: ({ supplies }: Budget): Sheet => ({
    head: ['Supply', 'Hook-up', ...draw, 'Rated A', 'Rated peak A', 'Margin A', 'Set V', 'Receive V', 'Sending V'],
    rows: supplies.map((s) => [
      ...[s.name, s.hookupName, ...drawn(s), s.ratedAmps, s.ratedPeakAmps, s.marginAmps],
      ...[s.volts, s.receiveVolts, s.sendingVolts],
    ]),
  }),
  loads: ({ loads }: Budget): Sheet => ({
    head: ['Load', 'Hook-up', ...draw, 'Receive V', 'Sending V', 'Works from V', 'Works to V', 'Dropped V'],
    rows: loads.map((l) => [
      ...[l.port, l.hookupName, ...drawn(l), l.receiveVolts, l.sendingVolts, l.minV, l.maxV, l.dropVolts],
    ]),
  }),
  branches: ({ branches }: Budget): Sheet => ({
    head: ['Branch', 'Cable', 'Hook-up', 'Supply', 'Behind', 'Fuses', ...draw, 'Drawn behind it A', 'Feeds'],
    rows: branches.map((b) => [
      ...[b.name, b.number, b.hookupName, b.supply, b.depth, fusesIn(b.fuses), ...drawn(b), b.drawnAmps],
      b.loads.join('; '),
    ]),
  }),
  ways: ({ ways }: Budget): Sheet => ({
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
  fuses: ({ fuses }: Budget): Sheet => ({
    head: ['Fuse', 'Hook-up', 'Rated A', ...draw, 'Short A', 'Breaks A', 'Guards', 'Wire stands A', 'By'],
    rows: fuses.map((f) => [
      ...[f.name, f.hookupName, f.ratedAmps, ...drawn(f), f.shortAmps ?? '', f.breakingAmps],
      ...[f.guards, f.wireLimitAmps ?? '', f.wireLimitSource],
    ]),
  }),
  wires: ({ wires }: Budget): Sheet => ({
    head: ['Cable', 'Hook-up', 'Wire', ...draw, 'Stands A', 'By', 'Dropped V'],
    rows: wires.map((w) => [
      ...[w.number, w.hookupName, w.wire, ...drawn(w), w.limitAmps ?? '', w.limitSource, w.dropVolts],
    ]),
  }),
  batteries: ({ batteries }: Budget): Sheet => ({
    head: [
      ...['Battery', 'Hook-up', 'Ah', 'Charge', 'Sending A', 'Average A', 'Peak A', 'Cut-off V', 'Empty after h'],
      ...['Usable h', 'Quits first', 'Left in it Ah', 'Plan h'],
    ],
    rows: batteries.map((b) => [
      ...[b.name, b.hookupName, b.ampHours, b.charge, b.sendingAmps, b.averageAmps, b.peakAmps, b.cutOffV, b.hours],
      ...[b.usableHours, b.quits ?? '', b.unusableAh, b.planHours],
    ]),
  }),
  courses: ({ batteries }: Budget): Sheet => ({
    head: ['Battery', 'Hook-up', 'Hours', 'Charge', 'Receive V', 'Sending V'],
    rows: batteries.flatMap((b) =>
      b.course.map((p: BatteryPoint) => [b.name, b.hookupName, p.hours, p.charge, p.receiveVolts, p.sendingVolts]),
    ),
  }),
};

const rfSheet = (reports: readonly RfReport[]): Sheet => ({
  head: ['Transmitter', 'Hook-up', 'Control', 'Part', 'Loss dB', 'Level dBm', 'Power W'],
  rows: reports.flatMap((r) =>
    r.staircase.map((s) => [r.transmitter, r.hookupName, r.controlName, s.name, s.lossDb, s.dbm, s.watts]),
  ),
});

/** Every table of the budget, for `writeCsv`. */
export const budgetSheet = (name: BudgetSheetName, budget: Budget, rf: readonly RfReport[]): Sheet =>
  name === 'rf' ? rfSheet(rf) : drawnSheets[name](budget);
