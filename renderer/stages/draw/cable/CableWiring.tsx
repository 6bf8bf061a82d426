import { type Cable, type Connector, plugOf, type Station } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';

type Wiring = NonNullable<Cable['wiring']>;

/** Which contact goes to which: straight or swapped for two, a row for each contact beyond. */
export function CableWiring({ station, cable }: { station: Station; cable: Cable }) {
  const a = plugOf(station, cable, 'a');
  const b = plugOf(station, cable, 'b');
  if (!a || !b) return null;
  const set = (wiring: Wiring | undefined) => change({ type: 'updateCable', id: cable.id, set: { wiring } });
  const straight = joinByNameOrRole(a, b);
  if (a.contacts.length === 2 && b.contacts.length === 2)
    return <Two straight={straight} wiring={cable.wiring} onChange={set} />;
  const wiring = cable.wiring ?? straight;
  const join = (from: string, to: string) => {
    const rest = wiring.filter((row) => row.a !== from);
    set(to === '' ? rest : [...rest, { a: from, b: to }]);
  };
  const options = [{ id: '', label: 'nothing' }, ...b.contacts.map((c) => ({ id: c.id, label: c.name }))];
  return (
    <fieldset className="figures">
      <legend>Wiring{cable.wiring ? '' : ', one to one'}</legend>
      {a.contacts.map((contact) => (
        <SelectField
          key={contact.id}
          label={`${contact.name} to`}
          value={wiring.find((row) => row.a === contact.id)?.b ?? ''}
          options={options}
          onChoose={(to) => join(contact.id, to)}
        />
      ))}
      {cable.wiring && (
        <button type="button" className="link small" onClick={() => set(undefined)}>
          One to one again
        </button>
      )}
    </fieldset>
  );
}

interface TwoProps {
  straight: Wiring;
  wiring: Wiring | undefined;
  onChange: (wiring: Wiring | undefined) => void;
}

function Two({ straight, wiring, onChange }: TwoProps) {
  const swapped = straight.map((row, i) => ({ a: row.a, b: straight[1 - i]?.b ?? row.b }));
  const isSwapped = wiring?.some((row) => swapped.some((s) => s.a === row.a && s.b === row.b)) ?? false;
  const options = [
    { id: 'straight', label: 'straight' },
    { id: 'swapped', label: 'swapped' },
  ];
  return (
    <SelectField
      label="Wiring"
      value={isSwapped ? 'swapped' : 'straight'}
      options={options}
      onChoose={(id) => onChange(id === 'swapped' ? swapped : undefined)}
    />
  );
}

/** Contacts of the same name together, else of the same role. */
function joinByNameOrRole(a: Connector, b: Connector): Wiring {
  const free = [...b.contacts];
  return a.contacts.flatMap((contact) => {
    const at = [free.findIndex((c) => c.id === contact.id), free.findIndex((c) => c.role === contact.role)].find(
      (i) => i >= 0,
    );
    const [other] = at === undefined ? [] : free.splice(at, 1);
    return other ? [{ a: contact.id, b: other.id }] : [];
  });
}
