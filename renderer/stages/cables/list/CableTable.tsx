import { Fragment, useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { type CableRow, counted, formatLength } from '../../../../core/index.ts';
import { useStation } from '../../../store/use-store.ts';
import { select } from '../../../store/view.ts';
import { CableDetails } from '../../draw/cable/CableDetails.tsx';
import { listsView, sortBy } from '../lists-view.ts';
import type { CableSort, SortColumn } from './arrange-cables.ts';
import { CableCells } from './CableCells.tsx';

const columns: readonly [SortColumn, string, string?][] = [
  ['number', 'No.'],
  ['from', 'From, plug'],
  ['to', 'To, plug'],
  ['kind', 'Cable'],
  ['length', 'Length', 'number'],
  ['fuse', 'Fuse'],
  ['status', 'Status'],
  ['note', 'Note'],
];

interface Props {
  rows: readonly CableRow[];
  chosen: readonly string[];
  sort: CableSort;
}

/** The rows of the list under headings that sort them; an open row has all of its cable under it. */
export function CableTable({ rows, chosen, sort }: Props) {
  const units = useStation((s) => s.settings.units ?? 'metric');
  const open = useStore(listsView, (v) => v.open);
  const body = useRef<HTMLTableSectionElement>(null);
  const [only] = chosen.length === 1 ? chosen : [];
  // A cable that is chosen on the drawing comes into view in the list.
  useEffect(() => {
    if (only !== undefined) body.current?.querySelector('tr.here')?.scrollIntoView({ block: 'nearest' });
  }, [only]);
  const total = rows.reduce((sum, row) => sum + row.lengthM, 0);
  return (
    <table className="table cable-table">
      <caption className="sr-only">Cables</caption>
      <thead>
        <tr>
          <th scope="col" className="screen-only">
            <ChooseAll rows={rows} chosen={chosen} />
          </th>
          {columns.map(([by, title, className]) => (
            <th
              key={by}
              scope="col"
              className={className}
              aria-sort={sort.by === by ? (sort.down ? 'descending' : 'ascending') : 'none'}
            >
              <button type="button" className="sort" onClick={() => sortBy(by)}>
                {title}
                <span aria-hidden="true">{sort.by === by ? (sort.down ? ' ▾' : ' ▴') : ''}</span>
              </button>
            </th>
          ))}
          <th scope="col" className="screen-only">
            <span className="sr-only">All of it</span>
          </th>
        </tr>
      </thead>
      <tbody ref={body}>
        {rows.map((row) => (
          <Fragment key={row.id}>
            <tr className={chosen.includes(row.id) ? 'here' : ''}>
              <CableCells row={row} chosen={chosen} isOpen={open === row.id} />
            </tr>
            {open === row.id && (
              <tr className="screen-only open-row">
                <td colSpan={columns.length + 2}>
                  <OpenCable id={row.id} number={row.number} />
                </td>
              </tr>
            )}
          </Fragment>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <td className="screen-only" />
          <th scope="row" colSpan={4}>
            {counted(rows.length, 'cable')}
          </th>
          <td className="number">{formatLength(total, units)}</td>
          <td colSpan={3} />
          <td className="screen-only" />
        </tr>
      </tfoot>
    </table>
  );
}

function ChooseAll({ rows, chosen }: Pick<Props, 'rows' | 'chosen'>) {
  const ids = rows.map((row) => row.id);
  const all = ids.length > 0 && ids.every((id) => chosen.includes(id));
  return (
    <input
      type="checkbox"
      aria-label="Choose all that are listed"
      checked={all}
      onChange={() => select({ cables: all ? [] : ids })}
    />
  );
}

function OpenCable({ id, number }: { id: string; number: string }) {
  const cable = useStation((s) => s.cables.find((c) => c.id === id));
  return (
    cable && (
      <section className="details open-cable" aria-label={`Details of ${number}`}>
        <CableDetails cable={cable} />
      </section>
    )
  );
}
