import { formatAmps, formatMillivolts, formatVolts, type WayRow } from '../../../../core/index.ts';
import { BudgetTable } from './BudgetTable.tsx';
import type { Compared } from './compared.ts';
import { Figure } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';

/** The parts of one way, in the order in which its current meets them. */
export function WayPartsTable({ way: { row, other } }: { way: Compared<WayRow> }) {
  const same = other?.parts.length === row.parts.length ? other : undefined;
  let left = row.supplyVolts;
  return (
    <BudgetTable title={`Parts of the way to ${row.name}`} columns={['Part', 'Carries', 'Drops', 'Left', 'Direction']}>
      {row.parts.map((part, i) => {
        left -= part.dropVolts;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same contact is met on the way out and on the way back
          <tr key={i}>
            <th scope="row">
              <PlaceLink places={[part.at]}>{part.name}</PlaceLink>
            </th>
            <Figure value={part.amps} whatIf={same?.parts[i]?.amps} format={formatAmps} />
            <Figure value={part.dropVolts} whatIf={same?.parts[i]?.dropVolts} format={formatMillivolts} />
            <td className="number">{formatVolts(left)}</td>
            <td>{part.back ? 'back' : 'out'}</td>
          </tr>
        );
      })}
    </BudgetTable>
  );
}
