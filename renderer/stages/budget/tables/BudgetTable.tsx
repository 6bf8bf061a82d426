import { useId } from 'react';
import { OldFigure } from '../../../widgets/OldFigure.tsx';

interface Props {
  title: string;
  /** The first is a name, the last a bar or words; those between are numbers. */
  columns: readonly string[];
  /** What can be done with the table: export it. */
  tools?: React.ReactNode;
  /** The last column is a number too. */
  numbersOnly?: boolean;
  children: React.ReactNode;
}

/** A titled table of the budget; its head is repeated on every printed page. */
export function BudgetTable({ title, columns, tools, numbersOnly = false, children }: Props) {
  const id = useId();
  return (
    <section aria-labelledby={id} className="budget-part">
      <div className="budget-part-head">
        <h3 className="table-title" id={id}>
          <OldFigure />
          {title}
        </h3>
        {tools}
      </div>
      <table className="table" aria-labelledby={id}>
        <thead>
          <tr>
            {columns.map((column, i) => (
              <th key={column} scope="col" className={i > 0 && (numbersOnly || i < columns.length - 1) ? 'number' : ''}>
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </section>
  );
}
