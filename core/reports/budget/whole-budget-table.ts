import type { ReportTable } from '../report-table.ts';
import type { Budget } from './rows.ts';

const head = [
  ...['What', 'Name', 'Hook-up', 'Receive A', 'Sending A', 'Average A', 'Rated A', 'Receive V', 'Sending V', 'Drop V'],
  ...['Usable hours', 'Peak A'],
];

/** What a row can say besides its name and its receive and sending amperes; what it does not know stays empty. */
interface Known {
  averageAmps?: number;
  ratedAmps?: number | null;
  receiveVolts?: number;
  sendingVolts?: number;
  dropVolts?: number;
  usableHours?: number;
  peakAmps?: number;
}

type Amperes = { hookupName: string; receiveAmps?: number; sendingAmps: number };

/**
 * The budget as one table: a row for each supply, load, branch, part of a way, fuse, wire and battery with what they have
 * in common; amperes, volts and hours as plain numbers. `budgetTable` gives each sort a table of its own, with all of it.
 */
export function wholeBudgetTable(budget: Budget): ReportTable {
  const { supplies, loads, branches, ways, fuses, wires, batteries } = budget;
  const rows = [
    ...supplies.map((s) => line('supply', s.name, s, s)),
    ...loads.map((l) => line('load', l.port, l, l)),
    ...branches.map((b) => line('branch', [b.name, b.number].filter(Boolean).join(', '), b, b)),
    ...ways.flatMap((way) =>
      way.parts.map(({ name, amps, dropVolts, back }) => {
        const named = `${way.port}, ${back ? 'back' : 'out'}: ${name}`;
        return line('way', named, { hookupName: way.hookupName, sendingAmps: amps }, { dropVolts });
      }),
    ),
    ...fuses.map((f) => line('fuse', f.name, f, f)),
    ...wires.map((w) => line('wire', w.number, w, { ...w, ratedAmps: w.limitAmps })),
    ...batteries.map((b) => line('battery', b.name, b, b)),
  ];
  return { head, rows };
}

function line(what: string, name: string, amperes: Amperes, known: Known): (string | number)[] {
  const { hookupName, receiveAmps = '', sendingAmps } = amperes;
  const { averageAmps = '', ratedAmps, receiveVolts = '', sendingVolts = '', dropVolts = '', peakAmps = '' } = known;
  return [
    ...[what, name, hookupName, receiveAmps, sendingAmps, averageAmps, ratedAmps ?? '', receiveVolts, sendingVolts],
    ...[dropVolts, known.usableHours ?? '', peakAmps],
  ];
}
