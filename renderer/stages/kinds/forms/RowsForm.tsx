import type { ElementField } from '../../../../core/index.ts';
import { blankValue } from '../fields/blank-value.ts';
import { removed, replaced } from '../fields/lists.ts';

type Values = Record<string, unknown>;

export type FieldGroup = (
  fields: readonly ElementField[],
  values: Values,
  onChange: (values: Values) => void,
) => React.ReactNode;

interface Props {
  field: Extract<ElementField, { holds: 'rows' | 'object' }>;
  value: unknown;
  label: string;
  group: FieldGroup;
  onChange: (value: unknown) => void;
}

/** A field with fields of its own: one group of them, or as many rows as wanted. */
export function RowsForm({ field, value, label, group, onChange }: Props) {
  const rows = (field.holds === 'rows' ? value : [value]) as Values[];
  const set = (next: Values[]) => onChange(next.length === 0 ? undefined : field.holds === 'rows' ? next : next[0]);
  return (
    <fieldset className="figures">
      <legend>{label}</legend>
      {rows.map((row, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows have nothing else to tell them apart
        <div key={i} className="kind-subrow">
          {group(field.fields, row, (next) => set(replaced(rows, i, next)))}
          <button
            type="button"
            className="link small"
            onClick={() => set(removed(rows, i))}
            aria-label={`Remove row ${i + 1} of ${label}`}
          >
            Remove
          </button>
        </div>
      ))}
      {field.holds === 'rows' && (
        <button
          type="button"
          className="link small"
          onClick={() => set([...rows, rows.at(-1) ?? (blankValue({ ...field, holds: 'object' }) as Values)])}
        >
          Add a row
        </button>
      )}
    </fieldset>
  );
}
