import { useContext, useState } from 'react';
import { type WayRow, worstWay } from '../../../core/index.ts';
import { BatteryChart } from './charts/BatteryChart.tsx';
import { DrawChart } from './charts/DrawChart.tsx';
import { VoltsChart } from './charts/VoltsChart.tsx';
import { distinctRfIn, ShownContext } from './shown.ts';
import { BatteryTable } from './tables/BatteryTable.tsx';
import { BranchTable } from './tables/BranchTable.tsx';
import { type Compared, compare, rowKey } from './tables/compared.ts';
import { FuseTable } from './tables/FuseTable.tsx';
import { LoadTable } from './tables/LoadTable.tsx';
import { RfTable } from './tables/RfTable.tsx';
import { SupplyTable } from './tables/SupplyTable.tsx';
import { WayPartsTable } from './tables/WayPartsTable.tsx';
import { WayTable } from './tables/WayTable.tsx';
import { WireTable } from './tables/WireTable.tsx';

/** The tables and charts of a hook-up, in the order in which current flows. */
export function BudgetSections() {
  const shown = useContext(ShownContext);
  if (!shown) return null;
  const { hookup, report, other } = shown;
  const { budget } = report;
  const loads = compare(budget.loads, other?.budget.loads, hookup.id);
  const batteries = compare(budget.batteries, other?.budget.batteries, hookup.id);
  const rf = distinctRfIn(report, hookup.id);
  return (
    <>
      <SupplyTable rows={compare(budget.supplies, other?.budget.supplies, hookup.id)} />
      <DrawChart rows={loads} />
      <LoadTable rows={loads} />
      <BranchTable rows={compare(budget.branches, other?.budget.branches, hookup.id)} />
      <Ways rows={compare(budget.ways, other?.budget.ways, hookup.id)} />
      <FuseTable rows={compare(budget.fuses, other?.budget.fuses, hookup.id)} />
      <WireTable rows={compare(budget.wires, other?.budget.wires, hookup.id)} />
      <BatteryTable rows={batteries} />
      {batteries.map((battery) => (
        <BatteryChart key={rowKey(battery.row)} battery={battery} />
      ))}
      {rf.map((one) => (
        <RfTable
          key={`${one.control} ${one.transmitter}`}
          rf={one}
          other={other?.rf.find(
            (r) => r.hookup === one.hookup && r.control === one.control && r.transmitter === one.transmitter,
          )}
        />
      ))}
    </>
  );
}

/** All ways, and one part by part: the worst, until another is chosen. */
function Ways({ rows }: { rows: readonly Compared<WayRow>[] }) {
  const [chosen, setChosen] = useState('');
  const worst = worstWay(rows.map(({ row }) => row));
  const way = rows.find(({ row }) => rowKey(row) === chosen) ?? rows.find(({ row }) => row === worst);
  if (!way || !worst) return null;
  const choice = (
    <select
      className="input way-choice"
      aria-label="Way shown part by part"
      value={rowKey(way.row)}
      onChange={(event) => setChosen(event.target.value)}
    >
      {rows.map(({ row }) => (
        <option key={rowKey(row)} value={rowKey(row)}>
          {row.port}
          {row === worst ? ' (the worst)' : ''}
        </option>
      ))}
    </select>
  );
  return (
    <>
      <WayTable rows={rows} />
      <VoltsChart way={way} tools={choice} />
      <WayPartsTable way={way} />
    </>
  );
}
