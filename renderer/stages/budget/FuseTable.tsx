import { type FuseRow, formatAmps, formatRating, formatWithin, type Place } from '../../../core/index.ts';
import { showPlaces } from '../../store/view.ts';
import { ShareBar } from '../../widgets/ShareBar.tsx';
import { BudgetTable } from './BudgetTable.tsx';

/** What each fuse carries, and the thinnest wire that it guards. */
export function FuseTable({ rows }: { rows: readonly FuseRow[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Branches and fuses"
      columns={['Fuse', 'Receive', 'Sending', 'Rated', 'A short there', 'Wire it guards', 'Share while sending']}
    >
      {rows.map((row) => (
        <tr key={`${row.unit ?? ''}${row.cable ?? ''}.${row.element ?? ''}`}>
          <th scope="row">
            <button type="button" className="link" onClick={() => showPlaces(placesOf(row))}>
              {row.name}
            </button>
          </th>
          <td className="number">{formatAmps(row.receiveAmps)}</td>
          <td className="number">{formatAmps(row.sendingAmps)}</td>
          <td className="number">{formatRating(row.ratedAmps)}</td>
          <td className="number">
            {row.shortAmps === null ? '–' : formatRating(row.shortAmps)}
            <small>breaks {formatRating(row.breakingAmps)}</small>
          </td>
          <td className="number">
            {row.guards || '–'}
            {row.wireLimitAmps !== null && (
              <small title={row.wireLimitSource}>stands {formatRating(row.wireLimitAmps)}</small>
            )}
          </td>
          <td>
            <ShareBar share={row.share} of={`the fuse’s ${formatRating(row.ratedAmps)}`} />
            {row.opensInS && <small>opens {formatWithin(row.opensInS)}</small>}
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}

const placesOf = ({ unit, cable }: FuseRow): Place[] => [...(unit ? [{ unit }] : []), ...(cable ? [{ cable }] : [])];
