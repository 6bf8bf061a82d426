import type { UnitKind } from '../../../../core/index.ts';
import { contactChoices } from '../fields/contact-choices.ts';
import { FlagField } from '../forms/FlagField.tsx';
import { setKindFields, useEditing } from '../kind-editor.ts';

/** What stands around it: the soil, the weather, the mains, and which contacts have nothing to do with its case. */
export function PlaceSection() {
  const editing = useEditing();
  const { kind } = editing;
  const isolated = kind.isolated ?? [];
  const set = (fields: Partial<UnitKind>) => void setKindFields(fields);
  const flag = (name: 'outdoor' | 'mains' | 'electrode', label: string) => (
    <FlagField label={label} value={kind[name] === true} onChange={(on) => set({ [name]: on || undefined })} />
  );
  const contacts = contactChoices(editing).filter(({ id }) => /^[\w-]+\.[\w-]+$/.test(id));
  return (
    <details className="kind-row" id="kind-isolated">
      <summary>
        <span className="kind-row-title">Where it is, and its case</span>
      </summary>
      <div className="kind-row-form">
        {flag('outdoor', 'It is outdoors')}
        {flag('mains', 'It hangs on the mains')}
        {flag('electrode', 'It stands in the soil')}
        <FlagField
          label="It has no metal that its contacts are joined to"
          value={isolated === 'all'}
          onChange={(on) => set({ isolated: on ? 'all' : undefined })}
        />
        {isolated !== 'all' && (
          <fieldset className="figures">
            <legend>Contacts kept apart from its case</legend>
            {contacts.map(({ id, label }) => (
              <FlagField
                key={id}
                label={label}
                value={isolated.includes(id)}
                onChange={(on) => {
                  const next = [...isolated.filter((ref) => ref !== id), ...(on ? [id] : [])];
                  set({ isolated: next.length > 0 ? next : undefined });
                }}
              />
            ))}
          </fieldset>
        )}
      </div>
    </details>
  );
}
