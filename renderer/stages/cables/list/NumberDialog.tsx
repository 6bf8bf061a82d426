import { useEffect, useRef, useState } from 'react';
import { type Change, counted, edit, limits, type NumberScheme, numberCables } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';

const schemes = [
  { id: 'class', label: 'by class: D1, R1, K1' },
  { id: 'unit', label: 'by the unit they come from: FS-1' },
  { id: 'running', label: 'in one row: 1, 2, 3' },
];
const orders = [
  { id: 'drawing', label: 'as units stand on the drawing' },
  { id: 'list', label: 'as they are listed now' },
];

interface Props {
  /** The ids of the cables in the list, in its order. */
  listed: readonly string[];
  /** Those of them that are chosen. */
  chosen: readonly string[];
  onClose: () => void;
}

/** Numbers cables anew by a scheme, and shows beforehand what each will be. */
export function NumberDialog({ listed, chosen, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const station = useStation();
  const [scheme, setScheme] = useState<NumberScheme>({ by: 'class', order: 'drawing', from: 1 });
  const [onlyChosen, setOnlyChosen] = useState(chosen.length > 0);
  useEffect(() => dialog.current?.showModal(), []);
  const ids = onlyChosen ? chosen : listed;
  const close = () => dialog.current?.close();
  const step = numberCables(station, scheme, ids);
  const after = edit(station, step);
  const locked = station.cables.filter((cable) => ids.includes(cable.id) && cable.numberLocked);
  const rows = station.cables.flatMap((cable, i) => {
    const number = after.cables[i]?.number ?? cable.number;
    return number === cable.number ? [] : [{ id: cable.id, was: cable.number, is: number }];
  });
  const doIt = (what: Change) => {
    change(what);
    close();
  };
  return (
    <dialog ref={dialog} className="dialog" aria-labelledby="number-title" onClose={onClose}>
      <h2 id="number-title">Number {counted(ids.length, 'cable')}</h2>
      {chosen.length > 0 && (
        <SelectField
          label="Cables"
          value={onlyChosen ? 'chosen' : 'listed'}
          options={[
            { id: 'chosen', label: `the chosen, ${chosen.length}` },
            { id: 'listed', label: `all that are listed, ${listed.length}` },
          ]}
          onChoose={(which) => setOnlyChosen(which === 'chosen')}
        />
      )}
      <SelectField
        label="Numbers"
        value={scheme.by}
        options={schemes}
        onChoose={(by) => setScheme({ ...scheme, by: by as NumberScheme['by'] })}
      />
      <SelectField
        label="In the order"
        value={scheme.order}
        options={orders}
        onChoose={(order) => setScheme({ ...scheme, order: order as NumberScheme['order'] })}
      />
      <QuantityField
        label="From"
        value={scheme.from}
        limit={limits.number}
        least={0}
        most={100_000}
        onCommit={(from) => setScheme({ ...scheme, from: Math.round(from) })}
      />
      {locked.length > 0 && (
        <p className="small">Locked, and so left: {locked.map((cable) => cable.number).join(', ')}</p>
      )}
      {rows.length > 0 && <Preview rows={rows} />}
      {rows.length === 0 && (
        <p role="status" className="small">
          All of them have these numbers already.
        </p>
      )}
      <div className="dialog-choices">
        <button type="button" className="button" onClick={close}>
          Cancel
        </button>
        <button type="button" className="button main" disabled={rows.length === 0} onClick={() => doIt(step)}>
          Number them
        </button>
      </div>
    </dialog>
  );
}

interface Renumbered {
  readonly id: string;
  readonly was: string;
  readonly is: string;
}

const Preview = ({ rows }: { rows: readonly Renumbered[] }) => (
  <div className="number-preview">
    <table className="table">
      <caption className="sr-only">What each will be</caption>
      <thead>
        <tr>
          <th scope="col">Now</th>
          <th scope="col">Then</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <td>{row.was}</td>
            <td>{row.is}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
