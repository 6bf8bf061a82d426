import { formatAmps, formatRating, formatVolts, type SupplyRow } from '../../../core/index.ts';
import { showPlaces } from '../../store/view.ts';
import { ShareBar } from '../../widgets/ShareBar.tsx';
import { BudgetTable } from './BudgetTable.tsx';

/** What each supply gives, against what it can give. */
export function SupplyTable({ rows }: { rows: readonly SupplyRow[] }) {
  return (
    <BudgetTable
      title="Supplies"
      columns={['Supply', 'Receive', 'Sending', 'Average', 'Rated', 'Left', 'Share while sending']}
    >
      {rows.map((row) => (
        <tr key={`${row.unit}.${row.element}`}>
          <th scope="row">
            <button type="button" className="link" onClick={() => showPlaces([{ unit: row.unit }])}>
              {row.name}
            </button>
            <small>
              {formatVolts(row.receiveVolts)} in receive, {formatVolts(row.sendingVolts)} sending
            </small>
          </th>
          <td className="number">{formatAmps(row.receiveAmps)}</td>
          <td className="number">{formatAmps(row.sendingAmps)}</td>
          <td className="number">{formatAmps(row.averageAmps)}</td>
          <td className="number">
            {formatRating(row.ratedAmps)}
            <small>peak {formatRating(row.peakAmps)}</small>
          </td>
          <td className="number">{formatAmps(row.marginAmps)}</td>
          <td>
            <ShareBar
              share={row.sendingAmps / row.ratedAmps}
              of={`the ${formatRating(row.ratedAmps)} it can give continuously`}
            />
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}
