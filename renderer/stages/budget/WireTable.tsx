import { formatAmps, formatRating, formatVolts, type WireRow } from '../../../core/index.ts';
import { showPlaces } from '../../store/view.ts';
import { ShareBar } from '../../widgets/ShareBar.tsx';
import { BudgetTable } from './BudgetTable.tsx';

/** What each power cable carries and loses, against what its wire stands. */
export function WireTable({ rows }: { rows: readonly WireRow[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable title="Wires" columns={['Cable', 'Receive', 'Sending', 'Lost in it', 'Share while sending']}>
      {rows.map((row) => (
        <tr key={row.cable}>
          <th scope="row">
            <button type="button" className="number-button" onClick={() => showPlaces([{ cable: row.cable }])}>
              {row.number}
            </button>{' '}
            {row.wire}
          </th>
          <td className="number">{formatAmps(row.receiveAmps)}</td>
          <td className="number">{formatAmps(row.sendingAmps)}</td>
          <td className="number">{formatVolts(row.dropVolts)}</td>
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
