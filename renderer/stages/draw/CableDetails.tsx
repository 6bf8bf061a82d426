import { type Cable, type CableEnd, cableKinds, classOf, plugOf, portName, type Station } from '../../../core/index.ts';
import { removeSelection } from '../../app/edit-actions.ts';
import { change } from '../../store/document.ts';
import { useStation } from '../../store/use-store.ts';
import { showPlaces } from '../../store/view.ts';
import { QuantityField } from '../../widgets/QuantityField.tsx';
import { SelectField } from '../../widgets/SelectField.tsx';
import { TextField } from '../../widgets/TextField.tsx';
import { CableCarries } from './CableCarries.tsx';
import { CableFuse } from './CableFuse.tsx';
import { CableHookups } from './CableHookups.tsx';
import { CableWiring } from './CableWiring.tsx';

const classNames = { dc: 'Power', rf: 'RF', audio: 'Audio', control: 'Keying', data: 'Data', earth: 'Earth' };
const statuses = [
  { id: 'toMake', label: 'to make' },
  { id: 'made', label: 'made' },
  { id: 'tested', label: 'tested' },
];

/** Everything about one cable. */
export function CableDetails({ cable }: { cable: Cable }) {
  const station = useStation();
  const set = (fields: Partial<Omit<Cable, 'id'>>) => change({ type: 'updateCable', id: cable.id, set: fields });
  const kind = classOf(station, cable);
  const renumber = (text: string) => {
    const number = text.trim();
    if (number === '') return 'A cable needs a number.';
    if (station.cables.some((c) => c.id !== cable.id && c.number === number)) return `${number} is already taken.`;
    set({ number });
    return undefined;
  };
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
      <End station={station} cable={cable} end="a" />
      <End station={station} cable={cable} end="b" />
      <TextField label="Number" value={cable.number} onCommit={renumber} />
      <SelectField
        label="Kind"
        value={cable.kind}
        options={kindChoices(station, cable)}
        onChoose={(id) => change(kindChange(cable, id))}
      />
      <QuantityField
        label="Length"
        value={cable.lengthM}
        kind="m"
        least={0}
        most={10_000}
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
        <button type="button" className="button" onClick={removeSelection}>
          Remove cable
        </button>
      </p>
    </>
  );
}

function End({ station, cable, end }: { station: Station; cable: Cable; end: CableEnd }) {
  const ref = cable[end];
  return (
    <div className="field">
      <span className="field-name">{end === 'a' ? 'From' : 'To'}</span>
      <div>
        <button type="button" className="link" onClick={() => showPlaces([ref, { cable: cable.id }])}>
          {portName(station, ref)}
        </button>
        <p className="soft small">{plugOf(station, cable, end)?.name ?? 'plug not known'}</p>
      </div>
    </div>
  );
}

/** Kinds of the cable's class; ready-made leads only where the document knows their plugs. */
function kindChoices(station: Station, cable: Cable) {
  const own = station.cableKinds[cable.kind];
  const known = (id: string | undefined) => id === undefined || station.connectors[id] !== undefined;
  const choices = cableKinds
    .filter(({ kind }) => kind.class === own?.class && known(kind.plugs?.a) && known(kind.plugs?.b))
    .map(({ id, kind }) => ({ id, label: kind.name }));
  return choices.some((c) => c.id === cable.kind) || !own ? choices : [{ id: cable.kind, label: own.name }, ...choices];
}

function kindChange(cable: Cable, id: string) {
  const kind = cableKinds.find((c) => c.id === id)?.kind;
  const carried = kind ? { cableKinds: { [id]: kind } } : {};
  return { type: 'updateCable' as const, id: cable.id, set: { kind: id }, carried };
}
