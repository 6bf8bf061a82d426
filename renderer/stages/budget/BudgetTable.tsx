interface Props {
  title: string;
  /** The first is a name, the last a bar or words; those between are numbers. */
  columns: readonly string[];
  children: React.ReactNode;
}

/** A titled table of the budget; its head is repeated on every printed page. */
export function BudgetTable({ title, columns, children }: Props) {
  const id = `budget-${title.toLowerCase()}`;
  return (
    <section aria-labelledby={id}>
      <h3 className="table-title" id={id}>
        {title}
      </h3>
      <table className="table" aria-labelledby={id}>
        <thead>
          <tr>
            {columns.map((column, i) => (
              <th key={column} scope="col" className={i > 0 && i < columns.length - 1 ? 'number' : ''}>
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
