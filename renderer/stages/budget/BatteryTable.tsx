import { type BatteryRow, formatAmps, formatHours, formatPercent } from '../../../core/index.ts';
import { showPlaces } from '../../store/view.ts';
import { ShareBar } from '../../widgets/ShareBar.tsx';
import { BudgetTable } from './BudgetTable.tsx';

/** How long each battery lasts by the plan, and what ends it; nothing where there is no battery. */
export function BatteryTable({ rows }: { rows: readonly BatteryRow[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Batteries"
      columns={['Battery', 'Average', 'Sending', 'Empty after', 'Usable', 'Left in it', 'Plan, of the usable hours']}
    >
      {rows.map((row) => (
        <tr key={row.unit}>
          <th scope="row">
            <button type="button" className="link" onClick={() => showPlaces([{ unit: row.unit }])}>
              {row.name}
            </button>
            <small>
              {formatPercent(row.charge)} of {row.ampHours} Ah
            </small>
          </th>
          <td className="number">{formatAmps(row.averageAmps)}</td>
          <td className="number">{formatAmps(row.sendingAmps)}</td>
          <td className="number">{formatHours(row.hours)}</td>
          <td className="number">
            {formatHours(row.usableHours)}
            {row.quits && <small>then {row.quits} quits</small>}
          </td>
          <td className="number">{row.unusableAh.toFixed(1)} Ah</td>
          <td>
            <ShareBar share={row.planHours / row.usableHours} of={`the usable ${formatHours(row.usableHours)}`} />
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}
