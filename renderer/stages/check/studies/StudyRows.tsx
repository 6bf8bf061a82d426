import { type ReactNode, useState } from 'react';

/** More rows than that are shown on demand: a large station has hundreds. */
const fewRows = 60;

interface Props<T> {
  rows: readonly T[];
  keyOf: (row: T) => string;
  children: (row: T) => ReactNode;
}

/** A ranked list: its first rows, and the others on demand. */
export function StudyRows<T>({ rows, keyOf, children }: Props<T>) {
  const [all, setAll] = useState(false);
  const shown = all ? rows : rows.slice(0, fewRows);
  const rest = rows.length - shown.length;
  return (
    <>
      <ol>
        {shown.map((row) => (
          <li key={keyOf(row)}>{children(row)}</li>
        ))}
      </ol>
      {rest > 0 && (
        <button type="button" className="link" onClick={() => setAll(true)}>
          Show the other {rest}
        </button>
      )}
    </>
  );
}
