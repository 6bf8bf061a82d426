import { type FuseRow, formatAmps, formatRating, formatWithin, type Place } from '../../../../core/index.ts';
import { ShareBar } from '../../../widgets/ShareBar.tsx';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { type Compared, rowKey } from './compared.ts';
import { Figure } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';

/** What each fuse carries, and the thinnest wire that it guards. */
export function FuseTable({ rows }: { rows: readonly Compared<FuseRow>[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Fuses"
      columns={['Fuse', 'Receive', 'Sending', 'Rated', 'A short there', 'Wire it guards', 'Share while sending']}
      tools={<ExportTable name="fuses" />}
    >
      {rows.map(({ row, other }) => (
        <tr key={rowKey(row)}>
          <th scope="row">
            <PlaceLink places={placesOf(row)}>{row.name}</PlaceLink>
          </th>
          <Figure value={row.receiveAmps} whatIf={other?.receiveAmps} format={formatAmps} />
          <Figure value={row.sendingAmps} whatIf={other?.sendingAmps} format={formatAmps}>
            <small>peak {formatAmps(row.peakAmps)}</small>
          </Figure>
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
            {other && <ShareBar share={other.share} of={`the fuse’s ${formatRating(row.ratedAmps)}, what if`} />}
            {row.opensInS && <small>opens {formatWithin(row.opensInS)}</small>}
          </td>
        </tr>
      ))}
    </BudgetTable>
  );
}

const placesOf = ({ unit, cable }: FuseRow): Place[] => [...(unit ? [{ unit }] : []), ...(cable ? [{ cable }] : [])];
