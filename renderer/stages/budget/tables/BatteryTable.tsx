import { type BatteryRow, formatAmpHours, formatAmps, formatHours, formatPercent } from '../../../../core/index.ts';
import { ShareBar } from '../../../widgets/ShareBar.tsx';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { type Compared, rowKey } from './compared.ts';
import { Figure, Supposition } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';

/** How long each battery lasts by the plan, and what ends it; nothing where there is no battery. */
export function BatteryTable({ rows }: { rows: readonly Compared<BatteryRow>[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Batteries"
      columns={['Battery', 'Average', 'Sending', 'Empty after', 'Usable', 'Left in it', 'Plan, of the usable hours']}
      tools={<ExportTable name="batteries" />}
    >
      {rows.map(({ row, other }) => (
        <tr key={rowKey(row)}>
          <th scope="row">
            <PlaceLink places={[{ unit: row.unit }]}>{row.name}</PlaceLink>
            <small>
              {formatPercent(row.charge)} of {row.ampHours} Ah
            </small>
          </th>
          <Figure value={row.averageAmps} whatIf={other?.averageAmps} format={formatAmps} />
          <Figure value={row.sendingAmps} whatIf={other?.sendingAmps} format={formatAmps}>
            <small>peak {formatAmps(row.peakAmps)}</small>
          </Figure>
          <Figure value={row.hours} whatIf={other?.hours} format={formatHours} />
          <td className="number">
            {formatHours(row.usableHours)}
            {row.quits && <small>then {row.quits} quits</small>}
            <Supposition value={row.usableHours} whatIf={other?.usableHours} format={formatHours} />
          </td>
          <td className="number">{formatAmpHours(row.unusableAh)}</td>
          <td>
            <ShareBar share={row.planHours / row.usableHours} of={`the usable ${formatHours(row.usableHours)}`} />
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}
