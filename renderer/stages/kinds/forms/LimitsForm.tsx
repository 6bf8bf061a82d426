import { type Port, limits as rows } from '../../../../core/index.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { useEditing } from '../kind-editor.ts';
import { AddPicker } from './AddPicker.tsx';

type Limits = NonNullable<Port['limits']>;

interface Props {
  port: Port;
  onChange: (limits: Limits | undefined) => void;
}

const figures = [
  { id: 'minV', label: 'down to', limit: rows.volts, first: -0.5 },
  { id: 'maxV', label: 'up to', limit: rows.volts, first: 16 },
  { id: 'amps', label: 'amps', limit: rows.amps, first: 1 },
] as const;

/** What each contact of a port stands. */
export function LimitsForm({ port, onChange }: Props) {
  const { connectors } = useEditing();
  const { limits = {} } = port;
  const contacts = connectors[port.connector]?.contacts ?? [];
  const nameOf = (id: string) => contacts.find((c) => c.id === id)?.name ?? `${id}: not there`;
  const set = (contact: string, figure: string, value: number | undefined) => {
    const { [contact]: old = {}, ...rest } = limits;
    const next = Object.fromEntries(Object.entries({ ...old, [figure]: value }).filter(([, v]) => v !== undefined));
    const all = Object.keys(next).length > 0 ? { ...limits, [contact]: next } : rest;
    onChange(Object.keys(all).length > 0 ? all : undefined);
  };
  const possible = [...new Set([...contacts.map((c) => c.id), ...Object.keys(limits)])].flatMap((contact) =>
    figures.map((figure) => ({ ...figure, contact, name: `${nameOf(contact)} ${figure.label}` })),
  );
  const missing = possible.filter(({ contact, id }) => limits[contact]?.[id] === undefined);
  return (
    <fieldset className="figures">
      <legend>What its contacts stand</legend>
      {possible.map(({ contact, id, limit, name }) => {
        const value = limits[contact]?.[id];
        return (
          value !== undefined && (
            <QuantityField
              key={`${contact} ${id}`}
              label={name}
              value={value}
              limit={limit}
              onCommit={(volts) => set(contact, id, volts)}
              after={
                <button
                  type="button"
                  className="tag own"
                  onClick={() => set(contact, id, undefined)}
                  aria-label={`Leave out: ${name}`}
                >
                  ✕
                </button>
              }
            />
          )
        );
      })}
      {missing.length > 0 && (
        <AddPicker
          label="Add a limit"
          options={missing.map(({ contact, id, name }) => ({ id: `${contact} ${id}`, label: name }))}
          onAdd={(key) => {
            const found = missing.find(({ contact, id }) => `${contact} ${id}` === key);
            if (found) set(found.contact, found.id, found.first);
          }}
        />
      )}
    </fieldset>
  );
}
