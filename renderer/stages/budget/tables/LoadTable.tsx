import { formatAmps, formatVolts, type LoadRow } from '../../../../core/index.ts';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { type Compared, rowKey } from './compared.ts';
import { Figure } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';
import { VoltageBar } from './VoltageBar.tsx';

/** What each load draws, what voltage reaches it and what of it is lost on the way. */
export function LoadTable({ rows }: { rows: readonly Compared<LoadRow>[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Loads"
      columns={['Load', 'Receive', 'Sending', 'Average', 'Peak', 'Lost on the way', 'Voltage in its working range']}
      tools={<ExportTable name="loads" />}
    >
      {rows.map(({ row, other }) => (
        <tr key={rowKey(row)}>
          <th scope="row">
            <PlaceLink places={[{ unit: row.unit }]}>{row.name}</PlaceLink>
          </th>
          <Figure value={row.receiveAmps} whatIf={other?.receiveAmps} format={formatAmps} />
          <Figure value={row.sendingAmps} whatIf={other?.sendingAmps} format={formatAmps} />
          <Figure value={row.averageAmps} whatIf={other?.averageAmps} format={formatAmps} />
          <Figure value={row.peakAmps} whatIf={other?.peakAmps} format={formatAmps} />
          <Figure value={row.dropVolts} whatIf={other?.dropVolts} format={formatVolts} />
          <td>
            <VoltageBar volts={row.sendingVolts} minV={row.minV} maxV={row.maxV} />
            {other && (
              <span className="what-if-bar">
                <span className="sr-only">what if</span>
                <VoltageBar volts={other.sendingVolts} minV={row.minV} maxV={row.maxV} />
              </span>
            )}
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}
