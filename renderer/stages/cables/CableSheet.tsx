import type { CableRow } from '../../../core/index.ts';
import { formatLength } from '../../../core/index.ts';
import { printSheet } from '../../app/print-actions.ts';
import { PrintFrame } from '../../print/PrintFrame.tsx';
import { useResults, useStation, useView } from '../../store/use-store.ts';
import { showPlaces } from '../../store/view.ts';
import { CableDetails } from '../draw/cable/CableDetails.tsx';
import '../draw/details.css';
import '../tables.css';

/** The cable list: what to make, and where each cable goes. */
export function CableSheet() {
  const rows = useResults((r) => r.report?.cables);
  const selected = useView((v) => v.selection.cables);
  const [only] = selected;
  const cable = useStation((s) => (selected.length === 1 ? s.cables.find((c) => c.id === only) : undefined));
  const sorted = [...(rows ?? [])].sort(byClassAndNumber);
  return (
    <aside className="sheet" aria-label="Cables">
      <div className="sheet-head">
        <h2>Cables</h2>
        <button type="button" className="button" onClick={() => void printSheet()}>
          Print the cable list
        </button>
      </div>
      <PrintFrame title="Cable list">
        {sorted.length === 0 ? (
          <p className="soft">No cable is laid yet.</p>
        ) : (
          <Table rows={sorted} selected={selected} />
        )}
      </PrintFrame>
      {cable && (
        <section className="sheet-part details" aria-label={`Details of ${cable.number}`}>
          <CableDetails key={cable.id} cable={cable} />
        </section>
      )}
    </aside>
  );
}

const classOrder = ['dc', 'rf', 'control', 'audio', 'data', 'earth'];

const byClassAndNumber = (a: CableRow, b: CableRow): number =>
  classOrder.indexOf(a.class) - classOrder.indexOf(b.class) ||
  a.number.localeCompare(b.number, 'en', { numeric: true });

function Table({ rows, selected }: { rows: readonly CableRow[]; selected: readonly string[] }) {
  const units = useStation((s) => s.settings.units ?? 'metric');
  const total = rows.reduce((sum, row) => sum + row.lengthM, 0);
  return (
    <table className="table">
      <caption className="sr-only">Cables</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">From, plug</th>
          <th scope="col">To, plug</th>
          <th scope="col">Cable</th>
          <th scope="col" className="number">
            Length
          </th>
          <th scope="col">Fuse</th>
          <th scope="col">Remarks</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id} className={selected.includes(row.id) ? 'here' : ''}>
            <th scope="row">
              <button
                type="button"
                className="number-button"
                aria-pressed={selected.includes(row.id)}
                onClick={() => showPlaces([{ cable: row.id }])}
              >
                {row.number}
              </button>
            </th>
            <td>
              {row.from}
              <small>{row.fromPlug}</small>
            </td>
            <td>
              {row.to}
              <small>{row.toPlug}</small>
            </td>
            <td>{row.kind}</td>
            <td className="number">{formatLength(row.lengthM, units)}</td>
            <td>{row.fuse || '–'}</td>
            <td className="remarks">
              {remarksOf(row).map((remark) => (
                <span key={remark}>{remark}</span>
              ))}
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={4}>
            {rows.length} {rows.length === 1 ? 'cable' : 'cables'}
          </th>
          <td className="number">{formatLength(total, units)}</td>
          <td colSpan={2} />
        </tr>
      </tfoot>
    </table>
  );
}

const remarksOf = (row: CableRow): string[] =>
  [
    row.wiring && `Wired ${row.wiring}`,
    row.adapters && `With ${row.adapters}`,
    row.hookups.length > 0 && row.hookups.join(', '),
    row.status,
    row.note,
  ].filter((text): text is string => Boolean(text));
