import { formatAmps, formatRating, formatVolts, type WireRow } from '../../../../core/index.ts';
import { showPlaces } from '../../../store/view.ts';
import { ShareBar } from '../../../widgets/ShareBar.tsx';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { type Compared, rowKey } from './compared.ts';
import { Figure } from './Figure.tsx';

/** What each power cable carries and loses, against what its wire stands. */
export function WireTable({ rows }: { rows: readonly Compared<WireRow>[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Wires"
      columns={['Cable', 'Receive', 'Sending', 'Average', 'Peak', 'Lost in it', 'Share while sending']}
      tools={<ExportTable name="wires" />}
    >
      {rows.map(({ row, other }) => (
        <tr key={rowKey(row)}>
          <th scope="row">
            <button type="button" className="number-button" onClick={() => showPlaces([{ cable: row.cable }])}>
              {row.number}
            </button>{' '}
            {row.wire}
          </th>
          <Figure value={row.receiveAmps} whatIf={other?.receiveAmps} format={formatAmps} />
          <Figure value={row.sendingAmps} whatIf={other?.sendingAmps} format={formatAmps} />
          <Figure value={row.averageAmps} whatIf={other?.averageAmps} format={formatAmps} />
          <Figure value={row.peakAmps} whatIf={other?.peakAmps} format={formatAmps} />
          <Figure value={row.dropVolts} whatIf={other?.dropVolts} format={formatVolts} />
          <td>
            {row.limitAmps === null ? (
              <span className="soft">limit not known</span>
            ) : (
              <ShareBar share={row.sendingAmps / row.limitAmps} of={`the ${formatRating(row.limitAmps)} it stands`} />
            )}
            {row.limitSource && <small className="soft">{row.limitSource}</small>}
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}
