import { formatAmps, formatRating, formatVolts, type SupplyRow } from '../../../../core/index.ts';
import { ShareBar } from '../../../widgets/ShareBar.tsx';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { type Compared, rowKey } from './compared.ts';
import { Figure, Supposition } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';

/** What each supply gives, against what it can give. */
export function SupplyTable({ rows }: { rows: readonly Compared<SupplyRow>[] }) {
  return (
    <BudgetTable
      title="Supplies"
      columns={['Supply', 'Receive', 'Sending', 'Average', 'Peak', 'Rated', 'Left', 'Share while sending']}
      tools={<ExportTable name="supplies" />}
    >
      {rows.map(({ row, other }) => (
        <tr key={rowKey(row)}>
          <th scope="row">
            <PlaceLink places={[{ unit: row.unit }]}>{row.name}</PlaceLink>
            <small>
              {formatVolts(row.receiveVolts)} in receive, {formatVolts(row.sendingVolts)} sending
            </small>
            <Supposition value={row.sendingVolts} whatIf={other?.sendingVolts} format={formatVolts} />
          </th>
          <Figure value={row.receiveAmps} whatIf={other?.receiveAmps} format={formatAmps} />
          <Figure value={row.sendingAmps} whatIf={other?.sendingAmps} format={formatAmps} />
          <Figure value={row.averageAmps} whatIf={other?.averageAmps} format={formatAmps} />
          <Figure value={row.peakAmps} whatIf={other?.peakAmps} format={formatAmps} />
          <td className="number">
            {formatRating(row.ratedAmps)}
            <small>peak {formatRating(row.ratedPeakAmps)}</small>
          </td>
          <Figure value={row.marginAmps} whatIf={other?.marginAmps} format={formatAmps} />
          <td>
            <ShareBar
              share={row.sendingAmps / row.ratedAmps}
              of={`the ${formatRating(row.ratedAmps)} it can give continuously`}
            />
            {other && (
              <ShareBar share={other.sendingAmps / other.ratedAmps} of="what it can give continuously, what if" />
            )}
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}
