import {
  type ElementField,
  fieldLabel,
  type QuantityKind,
  type UnitElement,
  withoutUndefined,
} from '../../../../core/index.ts';
import { blankValue } from '../fields/blank-value.ts';
import { AddPicker } from './AddPicker.tsx';
import { FieldForm } from './FieldForm.tsx';

interface Props {
  type: UnitElement['type'];
  fields: readonly ElementField[];
  values: Record<string, unknown>;
  unit?: QuantityKind | undefined;
  onChange: (values: Record<string, unknown>) => void;
}

/** Every field that is filled in, and a list of those that may be added. */
export function FieldsForm({ type, fields, values, unit, onChange }: Props) {
  const set = (name: string, value: unknown) => onChange(withoutUndefined({ ...values, [name]: value }));
  // Flags and conditions take no room while they say nothing.
  const always = (field: ElementField) => field.holds === 'flag' || field.holds === 'condition';
  const shown = fields.filter((field) => always(field) || values[field.name] !== undefined);
  const more = fields.filter((field) => !shown.includes(field));
  const unitOf = (field: ElementField) => (field.name === 'amount' || field.name === 'states' ? unit : undefined);
  return (
    <>
      {shown.map((field) => (
        <FieldForm
          key={field.name}
          type={type}
          field={field}
          value={values[field.name]}
          unit={unitOf(field)}
          group={(own, row, change) => (
            <FieldsForm type={type} fields={own} values={row} unit={unit} onChange={change} />
          )}
          onChange={(value) => set(field.name, value)}
        />
      ))}
      {more.length > 0 && (
        <AddPicker
          label="Add a figure"
          options={more.map((field) => ({ id: field.name, label: fieldLabel(type, field.name) }))}
          onAdd={(name) => {
            const field = more.find((f) => f.name === name);
            if (field) set(name, blankValue(field));
          }}
        />
      )}
    </>
  );
}
