import { useState } from 'react';
import { type Cable, cableKinds, classOf, connectors, limits, type Station } from '../../../../core/index.ts';
import { removeSelection } from '../../../app/editing/edit-actions.ts';
import { change } from '../../../store/document.ts';
import { useStation } from '../../../store/use-store.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { classNames, statuses } from '../../cables/class-names.ts';
import { renumber } from '../../cables/renumber.ts';
import { CableCarries } from './CableCarries.tsx';
import { CableEndDetails } from './CableEndDetails.tsx';
import { CableFuse } from './CableFuse.tsx';
import { CableHookups } from './CableHookups.tsx';
import { CableWiring } from './CableWiring.tsx';
import { SplitDialog } from './SplitDialog.tsx';
import { WireField } from './WireField.tsx';

/** Everything about one cable. */
export function CableDetails({ cable }: { cable: Cable }) {
  const station = useStation();
  const [splitting, setSplitting] = useState(false);
  const set = (fields: Partial<Omit<Cable, 'id'>>) => change({ type: 'updateCable', id: cable.id, set: fields });
  const kind = classOf(station, cable);
  const setNote = (note: string) => {
    set({ note: note.trim() === '' ? undefined : note });
    return undefined;
  };
  return (
    <>
      <div className="sheet-head">
        <h2>{cable.number}</h2>
        <span className={`class-pill c-${kind}`}>{classNames[kind]}</span>
      </div>
      <CableEndDetails station={station} cable={cable} end="a" />
      <CableEndDetails station={station} cable={cable} end="b" />
      <TextField label="Number" value={cable.number} onCommit={(text) => renumber(cable, text)} />
      <label className="check-line">
        <input
          type="checkbox"
          checked={cable.numberLocked ?? false}
          onChange={(event) => set({ numberLocked: event.target.checked ? true : undefined })}
        />
        The number stays when cables are numbered anew
      </label>
      <SelectField
        label="Kind"
        value={cable.kind}
        options={kindChoices(station, cable)}
        onChoose={(id) => change(kindChange(cable, id))}
      />
      <WireField cable={cable} />
      <QuantityField
        label="Length"
        value={cable.lengthM}
        limit={limits.metres}
        onCommit={(lengthM) => set({ lengthM })}
      />
      {kind === 'dc' && <CableFuse cable={cable} />}
      <SelectField
        label="Status"
        value={cable.status ?? 'toMake'}
        options={statuses}
        onChoose={(status) => set({ status: status as NonNullable<Cable['status']> })}
      />
      <CableWiring station={station} cable={cable} />
      <CableHookups cable={cable} />
      <CableCarries cable={cable} kind={kind} />
      <TextField label="Note" value={cable.note ?? ''} onCommit={setNote} multiline />
      <p className="details-buttons">
        <button type="button" className="button" onClick={() => setSplitting(true)}>
          Put a unit into it
        </button>
        <button type="button" className="button" onClick={removeSelection}>
          Remove cable
        </button>
      </p>
      {splitting && <SplitDialog cable={cable} onClose={() => setSplitting(false)} />}
    </>
  );
}

/** The kinds of the cable's class; its own where the shelf hasn't got it. */
function kindChoices(station: Station, cable: Cable) {
  const own = station.cableKinds[cable.kind];
  const choices = cableKinds
    .filter(({ kind }) => kind.class === own?.class)
    .map(({ id, kind }) => ({ id, label: kind.name }));
  return choices.some((c) => c.id === cable.kind) || !own ? choices : [{ id: cable.kind, label: own.name }, ...choices];
}

/** Another kind, with the plugs of its own that the document doesn't know yet. */
function kindChange(cable: Cable, id: string) {
  const kind = cableKinds.find((c) => c.id === id)?.kind;
  const plugs = Object.values(kind?.plugs ?? {}).flatMap((plug) => {
    const connector = connectors[plug];
    return connector ? [[plug, connector] as const] : [];
  });
  const carried = kind ? { cableKinds: { [id]: kind }, connectors: Object.fromEntries(plugs) } : {};
  return { type: 'updateCable' as const, id: cable.id, set: { kind: id }, carried };
}
