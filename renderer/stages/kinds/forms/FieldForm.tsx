import {
  type Condition,
  type ElementField,
  fieldLabel,
  formatHertz,
  formatPercent,
  type QuantityKind,
  type UnitElement,
} from '../../../../core/index.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { choiceLabel } from '../fields/choice-label.ts';
import { contactChoices, portChoices, withPresent } from '../fields/contact-choices.ts';
import { useEditing } from '../kind-editor.ts';
import { ConditionForm } from './ConditionForm.tsx';
import { FlagField } from './FlagField.tsx';
import { type FieldGroup, RowsForm } from './RowsForm.tsx';

interface Props {
  type: UnitElement['type'];
  field: ElementField;
  value: unknown;
  /** Where the schema leaves the unit open: amperes, watts or ohms, by the law of a load. */
  unit?: QuantityKind | undefined;
  /** Draws the fields that a field has itself. */
  group: FieldGroup;
  onChange: (value: unknown) => void;
}

/** One field of an element, whatever it holds. */
export function FieldForm({ type, field, value, unit, group, onChange }: Props) {
  const { kind, connectors } = useEditing();
  const label = fieldLabel(type, field.name);
  const remove = field.optional && (
    <button type="button" className="tag own" onClick={() => onChange(undefined)} aria-label={`Leave out: ${label}`}>
      ✕
    </button>
  );
  switch (field.holds) {
    case 'number': {
      const format = { share: formatPercent, Hz: formatHertz }[field.limit.unit as string];
      return (
        <QuantityField
          label={label}
          value={value as number}
          limit={unit ? { ...field.limit, unit } : field.limit}
          {...(format && { format })}
          onCommit={onChange}
          after={remove}
        />
      );
    }
    case 'flag':
      return (
        <FlagField
          label={label}
          value={value === true}
          onChange={(on) => onChange(on || !field.optional ? on : undefined)}
        />
      );
    case 'condition':
      return <ConditionForm label={label} value={value as Condition | undefined} onChange={onChange} />;
    case 'rows':
    case 'object':
      return <RowsForm field={field} value={value} label={label} group={group} onChange={onChange} />;
    default: {
      const chosen = String(value ?? '');
      const options = {
        choice: () => (field.holds === 'choice' ? field.options : []).map((id) => ({ id, label: choiceLabel(id) })),
        contact: () => contactChoices({ kind, connectors }, chosen),
        id: () => (field.name === 'load' ? audioInputs(kind.elements, chosen) : portChoices(kind, chosen)),
      }[field.holds]();
      return (
        <div className="kind-field">
          <SelectField label={label} value={chosen} options={options} onChoose={onChange} />
          {remove}
        </div>
      );
    }
  }
}

const audioInputs = (elements: readonly UnitElement[], chosen: string) =>
  withPresent(
    elements.filter((e) => e.type === 'audioLoad').map((e) => ({ id: e.id, label: e.id })),
    chosen,
  );
