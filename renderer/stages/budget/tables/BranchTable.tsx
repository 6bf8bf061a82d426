import { type BranchRow, formatAmps, formatRating, type Place } from '../../../../core/index.ts';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { type Compared, rowKey } from './compared.ts';
import { Figure } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';

/** What hangs behind each lead of a supply or an outlet; one behind another stands further in. */
export function BranchTable({ rows }: { rows: readonly Compared<BranchRow>[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="Branches"
      columns={['Branch', 'Fuse', 'Receive', 'Sending', 'Average', 'Peak', 'Feeds']}
      tools={<ExportTable name="branches" />}
    >
      {rows.map(({ row, other }) => (
        <tr key={rowKey(row)}>
          <th scope="row">
            <span className={`branch-name depth-${Math.min(row.depth, 4)}`}>
              <PlaceLink places={placesOf(row)}>{row.name}</PlaceLink>
              <small>{row.number || 'before several leads'}</small>
            </span>
          </th>
          <td className="number">{row.fuses.map((f) => formatRating(f.ratedAmps)).join(', ') || '–'}</td>
          <Figure value={row.receiveAmps} whatIf={other?.receiveAmps} format={formatAmps} />
          <Figure value={row.sendingAmps} whatIf={other?.sendingAmps} format={formatAmps} />
          <Figure value={row.averageAmps} whatIf={other?.averageAmps} format={formatAmps} />
          <Figure value={row.peakAmps} whatIf={other?.peakAmps} format={formatAmps} />
          <td>{row.loads.join(', ')}</td>
        </tr>
      ))}
    </BudgetTable>
  );
}

const placesOf = ({ unit, cable }: BranchRow): Place[] => [{ unit }, ...(cable ? [{ cable }] : [])];
