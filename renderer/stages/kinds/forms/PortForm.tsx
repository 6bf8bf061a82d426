import { formatHertz, limits, type Port, withoutUndefined } from '../../../../core/index.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { changeConnector } from '../fields/change-connector.ts';
import { withPresent } from '../fields/contact-choices.ts';
import { portWords } from '../fields/port-words.ts';
import { editKind, useEditing } from '../kind-editor.ts';
import { AddPicker } from './AddPicker.tsx';
import { LimitsForm } from './LimitsForm.tsx';

interface Props {
  port: Port;
  onChange: (port: Port) => void;
}

const options = (words: Record<string, string>) => Object.entries(words).map(([id, label]) => ({ id, label }));
const usualHz = { minHz: 1_800_000, maxHz: 30_000_000 };
const bounds = [
  { id: 'minHz', label: 'From frequency' },
  { id: 'maxHz', label: 'Up to frequency' },
] as const;

/** One port: its name, what it carries, its connector, where it is. */
export function PortForm({ port, onChange }: Props) {
  const { connectors } = useEditing();
  const set = (fields: Partial<Port>) => void onChange(withoutUndefined({ ...port, ...fields }));
  const choices = Object.entries(connectors)
    .map(([id, { name }]) => ({ id, label: name }))
    .sort((a, b) => a.label.localeCompare(b.label));
  const missing = bounds.filter(({ id }) => port[id] === undefined);
  return (
    <>
      <TextField label="Name on the card" value={port.label} live onCommit={(label) => set({ label })} />
      <SelectField
        label="Carries"
        value={port.class}
        options={options(portWords.class)}
        onChoose={(id) => set({ class: id as Port['class'] })}
      />
      <SelectField
        label="Connector"
        value={port.connector}
        options={withPresent(choices, port.connector)}
        onChoose={(id) => editKind((kind) => changeConnector(kind, port.id, connectors, id))}
      />
      <SelectField
        label="Side"
        value={port.side}
        options={options(portWords.side)}
        onChoose={(id) => set({ side: id as Port['side'] })}
      />
      <SelectField
        label="Needed"
        value={port.needed}
        options={options(portWords.needed)}
        onChoose={(id) => set({ needed: id as Port['needed'] })}
      />
      {bounds.map(({ id, label }) => {
        const hz = port[id];
        return (
          hz !== undefined && (
            <QuantityField
              key={id}
              label={label}
              value={hz}
              limit={limits.hertz}
              format={formatHertz}
              onCommit={(value) => set({ [id]: value })}
              after={
                <button
                  type="button"
                  className="tag own"
                  onClick={() => set({ [id]: undefined })}
                  aria-label={`Leave out: ${label}`}
                >
                  ✕
                </button>
              }
            />
          )
        );
      })}
      {port.class === 'rf' && missing.length > 0 && (
        <AddPicker
          label="Add a figure"
          options={missing}
          onAdd={(id) => set({ [id]: usualHz[id as keyof typeof usualHz] })}
        />
      )}
      <LimitsForm port={port} onChange={(limits) => set({ limits })} />
      <TextField
        label="Note"
        sort="text"
        value={port.note ?? ''}
        onCommit={(note) => set({ note: note.trim() === '' ? undefined : note })}
      />
    </>
  );
}
