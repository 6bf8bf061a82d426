import { formatLength, type MakeRow } from '../../../../core/index.ts';
import { useStation } from '../../../store/use-store.ts';
import { showPlaces } from '../../../store/view.ts';

/** Cut lengths, plugs, fuses, sleeves and flags, a row for each cable. */
export function MakeTable({ rows }: { rows: readonly MakeRow[] }) {
  const units = useStation((s) => s.settings.units ?? 'metric');
  return (
    <table className="table">
      <caption className="sr-only">What to make</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Cable</th>
          <th scope="col" className="number">
            Cut
          </th>
          <th scope="col">From, plug</th>
          <th scope="col">To, plug</th>
          <th scope="col">Fuse</th>
          <th scope="col">Sleeves</th>
          <th scope="col" className="number">
            Flags
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">
              <button type="button" className="number-button" onClick={() => showPlaces([{ cable: row.id }])}>
                {row.number}
              </button>
            </th>
            <td>
              {row.kind}
              <small>{row.conductors}</small>
            </td>
            <td className="number">{formatLength(row.cutM, units)}</td>
            {row.ends.map((end, i) => (
              <td key={i === 0 ? 'a' : 'b'}>
                {end.at}
                <small>
                  {end.pieces > 1 ? `${end.pieces} × ` : ''}
                  {[end.plug, ...end.adapters].join(', then ')}
                </small>
              </td>
            ))}
            <td>
              {row.fuse ? row.fuse.name : '–'}
              {row.fuse && (
                <small>
                  {row.fuse.holder}, {formatLength(row.fuse.atM, units)} from its start
                </small>
              )}
            </td>
            <td>{sleeves(row)}</td>
            <td className="number">{row.flags}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function sleeves({ heatShrink: { overCable, overCores } }: MakeRow): string {
  const parts = [overCable > 0 && `${overCable} over the cable`, overCores > 0 && `${overCores} over cores`];
  return parts.filter(Boolean).join(', ') || '–';
}
