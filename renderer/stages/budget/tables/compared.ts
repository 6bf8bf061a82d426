/** A row of a table, and the same row with other figures supposed. */
export interface Compared<T> {
  readonly row: T;
  readonly other: T | undefined;
}

interface Named {
  readonly hookup: string;
  readonly unit?: string;
  readonly cable?: string;
  readonly element?: string;
  readonly name?: string;
}

/** What tells the rows of a table apart within a hook-up. */
export const rowKey = ({ unit = '', cable = '', element = '', name = '' }: Named): string =>
  [unit, cable, element, name].join(' ');

/** The rows of a hook-up, each with its own of another budget, where there is one. */
export function compare<T extends Named>(rows: readonly T[], others: readonly T[] | undefined, hookup: string) {
  const known = new Map(others?.filter((row) => row.hookup === hookup).map((row) => [rowKey(row), row]));
  return rows
    .filter((row) => row.hookup === hookup)
    .map((row): Compared<T> => ({ row, other: known.get(rowKey(row)) }));
}
