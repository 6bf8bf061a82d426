import { useEffect, useMemo, useState } from 'react';
import { compareHookups, type Hookup, type HookupDifference } from '../../../../core/index.ts';
import { useHookup } from '../../../store/current.ts';
import { useStation } from '../../../store/use-store.ts';
import { keepMarked, lookAt, pointAt } from '../../../store/view.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';

/** What is plugged or set otherwise in two hook-ups; marked on the drawing as long as it is asked for. */
export function CompareHookups({ hookups }: { hookups: readonly Hookup[] }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="link small" aria-expanded={open} onClick={() => setOpen(!open)}>
        {open ? 'Stop comparing' : 'Compare two hook-ups'}
      </button>
      {open && <Comparison hookups={hookups} />}
    </>
  );
}

function Comparison({ hookups }: { hookups: readonly Hookup[] }) {
  const station = useStation();
  const looked = useHookup();
  const [oneId, setOne] = useState(looked.id);
  const [otherId, setOther] = useState('');
  // One that is gone meanwhile gives way to another; compared with itself nothing differs.
  const one = hookups.find((h) => h.id === oneId) ?? hookups[0];
  const other = hookups.find((h) => h.id === otherId && h !== one) ?? hookups.find((h) => h !== one);
  const differences = useMemo(() => (one && other ? compareHookups(station, one, other) : []), [station, one, other]);
  useEffect(() => {
    keepMarked(differences.flatMap((d) => d.at));
    return () => keepMarked([]);
  }, [differences]);
  if (!one || !other) return null;
  const options = hookups.map(({ id, name }) => ({ id, label: name }));
  return (
    <>
      <SelectField label="This one" value={one.id} options={options} onChoose={setOne} />
      <SelectField label="With" value={other.id} options={options.filter((o) => o.id !== one.id)} onChoose={setOther} />
      {differences.length === 0 ? (
        <p className="soft small" role="status">
          They have the same cables and settings.
        </p>
      ) : (
        <Differences one={one.name} other={other.name} rows={differences} />
      )}
    </>
  );
}

function Differences({ one, other, rows }: { one: string; other: string; rows: readonly HookupDifference[] }) {
  return (
    <table className="table differences" aria-label={`What differs between ${one} and ${other}`}>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">{one}</th>
          <th scope="col">{other}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, at, one: left, other: right }) => (
          <tr key={what} onPointerEnter={() => pointAt(at)} onPointerLeave={() => pointAt([])}>
            <th scope="row">
              <button
                type="button"
                className="link"
                onClick={() => lookAt(at)}
                onFocus={() => pointAt(at)}
                onBlur={() => pointAt([])}
              >
                {what}
              </button>
            </th>
            <td>{left}</td>
            <td>{right}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
