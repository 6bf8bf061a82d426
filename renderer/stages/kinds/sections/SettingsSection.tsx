import type { UnitKind } from '../../../../core/index.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { freeId } from '../fields/blank-element.ts';
import { moved, removed, replaced } from '../fields/lists.ts';
import { openRow } from '../fields/open-row.ts';
import { ItemRow } from '../forms/ItemRow.tsx';
import { setKindFields, useEditing } from '../kind-editor.ts';

type Setting = NonNullable<UnitKind['settings']>[number];

/** Switch positions that the operator chooses beforehand. */
export function SettingsSection() {
  const { settings = [] } = useEditing().kind;
  const set = (next: Setting[]) => setKindFields({ settings: next.length > 0 ? next : undefined });
  const add = () => {
    const positions = [
      { id: 'one', label: 'one' },
      { id: 'two', label: 'two' },
    ];
    set([...settings, { id: freeId(settings, 'setting'), label: 'Setting', options: positions, initial: 'one' }]);
    openRow(`settings[${settings.length}]`);
  };
  return (
    <section aria-labelledby="kind-settings">
      <h3 id="kind-settings">Settings</h3>
      {settings.map((setting, i) => (
        <ItemRow
          key={setting.id}
          place={`settings[${i}]`}
          title={setting.label || setting.id}
          note={setting.options.map((o) => o.label).join(', ')}
          onRemove={() => set(removed(settings, i))}
          onMove={(by) => set(moved(settings, i, by))}
        >
          <SettingForm setting={setting} onChange={(next) => set(replaced(settings, i, next))} />
        </ItemRow>
      ))}
      <button type="button" className="button" onClick={add}>
        Add a setting
      </button>
    </section>
  );
}

function SettingForm({ setting, onChange }: { setting: Setting; onChange: (setting: Setting) => void }) {
  const { options } = setting;
  const set = (fields: Partial<Setting>) => void onChange({ ...setting, ...fields });
  return (
    <>
      <TextField label="Name" value={setting.label} live onCommit={(label) => set({ label })} />
      {options.map((option, i) => (
        <TextField
          key={option.id}
          label={`Position ${i + 1}`}
          value={option.label}
          onCommit={(label) => set({ options: replaced(options, i, { ...option, label }) })}
          after={
            options.length > 1 && (
              <button
                type="button"
                className="tag own"
                aria-label={`Leave out position ${option.label}`}
                onClick={() => set({ options: removed(options, i) })}
              >
                ✕
              </button>
            )
          }
        />
      ))}
      <button
        type="button"
        className="link small"
        onClick={() => set({ options: [...options, { id: freeId(options, 'position'), label: 'another' }] })}
      >
        Add a position
      </button>
      <SelectField
        label="At first"
        value={setting.initial}
        options={options}
        onChoose={(initial) => set({ initial })}
      />
    </>
  );
}
