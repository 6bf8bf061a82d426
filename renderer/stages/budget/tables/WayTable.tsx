import { formatVolts, type WayPart, type WayRow } from '../../../../core/index.ts';
import { ExportTable } from '../ExportTable.tsx';
import { BudgetTable } from './BudgetTable.tsx';
import { type Compared, rowKey } from './compared.ts';
import { Figure, Supposition } from './Figure.tsx';
import { PlaceLink } from './PlaceLink.tsx';

const sumOf = (way: WayRow | undefined, counts: (part: WayPart) => boolean): number | undefined =>
  way?.parts.filter(counts).reduce((sum, part) => sum + part.dropVolts, 0);

const columns: readonly (readonly [title: string, counts: (part: WayPart) => boolean])[] = [
  ['Leads', (p) => !p.back && p.kind === 'lead'],
  ['Contacts', (p) => !p.back && p.kind === 'contact'],
  ['Fuses', (p) => !p.back && p.kind === 'fuse'],
  ['In boxes', (p) => !p.back && (p.kind === 'inside' || p.kind === 'diode')],
  ['Way back', (p) => p.back],
];

/** For each load, what each sort of part between the supply and it takes of the voltage while sending. */
export function WayTable({ rows }: { rows: readonly Compared<WayRow>[] }) {
  if (rows.length === 0) return null;
  return (
    <BudgetTable
      title="What the ways drop"
      columns={['Load', ...columns.map(([title]) => title), 'Together', 'Load gets']}
      numbersOnly
      tools={<ExportTable name="ways" />}
    >
      {rows.map(({ row, other }) => (
        <tr key={rowKey(row)}>
          <th scope="row">
            <PlaceLink places={[{ unit: row.unit }, ...row.parts.map((part) => part.at)]}>{row.name}</PlaceLink>
            <small>
              {row.supply} gives {formatVolts(row.supplyVolts)}
            </small>
            <Supposition value={row.supplyVolts} whatIf={other?.supplyVolts} format={formatVolts} />
          </th>
          {columns.map(([title, counts]) => (
            <Figure key={title} value={sumOf(row, counts) ?? 0} whatIf={sumOf(other, counts)} format={formatVolts} />
          ))}
          <Figure value={row.dropVolts} whatIf={other?.dropVolts} format={formatVolts} />
          <Figure value={row.loadVolts} whatIf={other?.loadVolts} format={formatVolts} />
        </tr>
      ))}
    </BudgetTable>
  );
}
