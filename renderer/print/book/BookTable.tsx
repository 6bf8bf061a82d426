import type { ReportTable } from '../../../core/index.ts';

interface Props {
  table: ReportTable;
  /** Columns that paper does without. */
  without?: readonly string[];
}

/** A table on paper; columns that are empty all the way down are left out. */
export function BookTable({ table: { head, rows }, without = [] }: Props) {
  const shown = head
    .map((title, at) => ({ title, at }))
    .filter(({ title, at }) => !without.includes(title) && rows.some((row) => row[at] !== '' && row[at] !== undefined));
  return (
    <table className="table">
      <thead>
        <tr>
          {shown.map(({ title }) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows on paper never move
          <tr key={i}>
            {shown.map(({ title, at }) => (
              <td key={title} className={typeof row[at] === 'number' ? 'number' : undefined}>
                {row[at]}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
