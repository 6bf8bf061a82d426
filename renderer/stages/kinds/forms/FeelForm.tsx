import { elementTitle, type Feel, limits, type Port, withoutUndefined } from '../../../../core/index.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { contactChoices, portChoices, withPresent } from '../fields/contact-choices.ts';
import { useEditing } from '../kind-editor.ts';

interface Props {
  feel: Feel;
  onChange: (feel: Feel) => void;
}

const types = [
  { id: 'operator', label: 'a hand, a foot or a program' },
  { id: 'voltageBelow', label: 'a voltage below' },
  { id: 'voltageAbove', label: 'a voltage above' },
  { id: 'currentAbove', label: 'a current above' },
  { id: 'rfAbove', label: 'RF above' },
  { id: 'actor', label: 'another switch in it' },
];

/** One thing that an actor feels. */
export function FeelForm({ feel, onChange }: Props) {
  const editing = useEditing();
  const { kind } = editing;
  const blank = (type: string): Feel => {
    const contact = contactChoices(editing)[0]?.id ?? 'chassis';
    const port = kind.ports.find((p: Port) => p.class === 'rf') ?? kind.ports[0];
    const blanks: Record<string, Feel> = {
      operator: { type: 'operator', label: '' },
      voltageBelow: { type: 'voltageBelow', contact, volts: 1 },
      voltageAbove: { type: 'voltageAbove', contact, volts: 5 },
      currentAbove: { type: 'currentAbove', element: kind.elements[0]?.id ?? 'part', amps: 0.1 },
      rfAbove: { type: 'rfAbove', port: port?.id ?? 'port', dbm: 20 },
      actor: { type: 'actor', actor: kind.actors?.[0]?.id ?? 'switch' },
    };
    return blanks[type] ?? feel;
  };
  const parts = kind.elements.map((e) => ({ id: e.id, label: `${elementTitle(kind, e)} (${e.id})` }));
  const others = (kind.actors ?? []).map((a) => ({ id: a.id, label: a.label || a.id }));
  return (
    <>
      <SelectField label="Feels" value={feel.type} options={types} onChoose={(type) => onChange(blank(type))} />
      {feel.type === 'operator' && (
        <TextField label="Control" value={feel.label} onCommit={(label) => void onChange({ ...feel, label })} />
      )}
      {(feel.type === 'voltageBelow' || feel.type === 'voltageAbove') && (
        <>
          <QuantityField
            label="Volts"
            value={feel.volts}
            limit={limits.volts}
            onCommit={(volts) => onChange({ ...feel, volts })}
          />
          <SelectField
            label="At"
            value={feel.contact}
            options={contactChoices(editing, feel.contact)}
            onChoose={(contact) => onChange({ ...feel, contact })}
          />
          <SelectField
            label="Against"
            value={feel.reference ?? ''}
            options={[{ id: '', label: 'the usual return' }, ...contactChoices(editing, feel.reference ?? 'chassis')]}
            onChoose={(id) => onChange(withoutUndefined({ ...feel, reference: id === '' ? undefined : id }) as Feel)}
          />
        </>
      )}
      {feel.type === 'currentAbove' && (
        <>
          <QuantityField
            label="Amps"
            value={feel.amps}
            limit={limits.amps}
            onCommit={(amps) => onChange({ ...feel, amps })}
          />
          <SelectField
            label="In"
            value={feel.element}
            options={withPresent(parts, feel.element)}
            onChoose={(element) => onChange({ ...feel, element })}
          />
        </>
      )}
      {feel.type === 'rfAbove' && (
        <>
          <QuantityField
            label="Level"
            value={feel.dbm}
            limit={limits.dbm}
            onCommit={(dbm) => onChange({ ...feel, dbm })}
          />
          <SelectField
            label="At port"
            value={feel.port}
            options={portChoices(kind, feel.port)}
            onChoose={(port) => onChange({ ...feel, port })}
          />
        </>
      )}
      {feel.type === 'actor' && (
        <SelectField
          label="Which"
          value={feel.actor}
          options={withPresent(others, feel.actor)}
          onChoose={(actor) => onChange({ ...feel, actor })}
        />
      )}
    </>
  );
}
