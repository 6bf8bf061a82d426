import { formatAmps, formatVolts, type LoadRow } from '../../../core/index.ts';
import { showPlaces } from '../../store/view.ts';
import { BudgetTable } from './BudgetTable.tsx';
import { VoltageBar } from './VoltageBar.tsx';

/** What each load draws, what voltage reaches it and what of it is lost on the way. */
export function LoadTable({ rows }: { rows: readonly LoadRow[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Loads"
      columns={['Load', 'Receive', 'Sending', 'Average', 'Lost on the way', 'Voltage in its working range']}
    >
      {rows.map((row) => (
        <tr key={`${row.unit}.${row.element}`}>
          <th scope="row">
            <button type="button" className="link" onClick={() => showPlaces([{ unit: row.unit }])}>
              {row.name}
            </button>
          </th>
          <td className="number">{formatAmps(row.receiveAmps)}</td>
          <td className="number">{formatAmps(row.sendingAmps)}</td>
          <td className="number">{formatAmps(row.averageAmps)}</td>
          <td className="number">{formatVolts(row.dropVolts)}</td>
          <td>
            <VoltageBar volts={row.sendingVolts} minV={row.minV} maxV={row.maxV} />
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}
