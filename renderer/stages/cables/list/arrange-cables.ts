import { asPeopleCount, type CableRow } from '../../../../core/index.ts';
import { hasWords } from '../../../widgets/has-words.ts';

export type SortColumn = 'class' | 'number' | 'from' | 'to' | 'kind' | 'length' | 'fuse' | 'status' | 'note';

export interface CableSort {
  readonly by: SortColumn;
  readonly down: boolean;
}

export interface CableFilter {
  /** Each word has to be somewhere in the row. */
  readonly words: string;
  readonly class: CableRow['class'] | 'all';
  readonly status: string;
  /** The name of a hook-up. */
  readonly hookup: string;
}

const classOrder: readonly string[] = ['dc', 'rf', 'control', 'audio', 'data', 'earth'];

const keys: Record<SortColumn, (row: CableRow) => string | number> = {
  class: (row) => classOrder.indexOf(row.class),
  number: (row) => row.number,
  from: (row) => row.from,
  to: (row) => row.to,
  kind: (row) => row.kind,
  length: (row) => row.lengthM,
  fuse: (row) => (row.fuse === '' ? 0 : Number.parseFloat(row.fuse)),
  status: (row) => ['to make', 'made', 'tested'].indexOf(row.status),
  note: (row) => row.note,
};

/** The rows that pass the filter, in the order that is wanted; those that are equal in it by their number. */
export function arrangeCables(rows: readonly CableRow[], filter: CableFilter, sort: CableSort): CableRow[] {
  const key = keys[sort.by];
  const sign = sort.down ? -1 : 1;
  return rows
    .filter((row) => passes(row, filter))
    .sort((a, b) => sign * compare(key(a), key(b)) || compare(a.number, b.number));
}

const passes = (row: CableRow, { words, class: wanted, status, hookup }: CableFilter): boolean =>
  (wanted === 'all' || row.class === wanted) &&
  (status === 'all' || row.status === status) &&
  // A cable without hook-ups of its own is plugged in for all.
  (hookup === 'all' || row.hookups.length === 0 || row.hookups.includes(hookup)) &&
  hasWords(textOf(row), words);

const textOf = (row: CableRow): string =>
  [
    row.number,
    row.from,
    row.to,
    row.fromPlug,
    row.toPlug,
    row.kind,
    row.fuse,
    row.wiring,
    row.adapters,
    row.status,
    row.note,
    ...row.hookups,
  ].join(' ');

function compare(a: string | number, b: string | number): number {
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return asPeopleCount(String(a), String(b));
}
