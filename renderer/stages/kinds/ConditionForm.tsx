import type { Condition } from '../../../core/index.ts';
import { SelectField } from '../../widgets/SelectField.tsx';
import { useEditing, withoutUndefined } from './kind-editor.ts';

interface Props {
  label: string;
  value: Condition | undefined;
  onChange: (value: Condition | undefined) => void;
}

const power = [
  { id: '', label: 'with power or without' },
  { id: 'true', label: 'only with power' },
  { id: 'false', label: 'only without power' },
];

/** When something is in force: what is on or off, with power or without, at which settings. All must hold. */
export function ConditionForm({ label, value = {}, onChange }: Props) {
  const { actors = [], settings = [] } = useEditing().kind;
  const known = (list: readonly string[] = []) => list.filter((id) => !actors.some((a) => a.id === id));
  const strays = [...known(value.on), ...known(value.off)];
  const set = (fields: Partial<Record<keyof Condition, unknown>>) => {
    const next = withoutUndefined({ ...value, ...fields }) as Condition;
    onChange(Object.keys(next).length > 0 ? next : undefined);
  };
  const without = (list: readonly string[] | undefined, id: string, add: boolean) => {
    const next = [...(list ?? []).filter((other) => other !== id), ...(add ? [id] : [])];
    return next.length > 0 ? next : undefined;
  };
  const setActor = (id: string, state: string) =>
    set({ on: without(value.on, id, state === 'on'), off: without(value.off, id, state === 'off') });
  const setSetting = (id: string, position: string) => {
    const rest = Object.entries(value.settings ?? {}).filter(([other]) => other !== id);
    const next = position === '' ? rest : [...rest, [id, position] as const];
    set({ settings: next.length > 0 ? Object.fromEntries(next) : undefined });
  };
  return (
    <fieldset className="figures kind-condition">
      <legend>{label}</legend>
      <SelectField
        label="Power"
        value={value.powered === undefined ? '' : String(value.powered)}
        options={power}
        onChoose={(id) => set({ powered: id === '' ? undefined : id === 'true' })}
      />
      {[
        ...actors.map((a) => ({ id: a.id, name: a.label || a.id })),
        ...strays.map((id) => ({ id, name: `${id}: not there` })),
      ].map(({ id, name }) => (
        <SelectField
          key={id}
          label={name}
          value={value.on?.includes(id) ? 'on' : value.off?.includes(id) ? 'off' : ''}
          options={[
            { id: '', label: 'on or off' },
            { id: 'on', label: 'only while on' },
            { id: 'off', label: 'only while off' },
          ]}
          onChoose={(state) => setActor(id, state)}
        />
      ))}
      {settings.map((setting) => (
        <SelectField
          key={setting.id}
          label={setting.label || setting.id}
          value={value.settings?.[setting.id] ?? ''}
          options={[{ id: '', label: 'any position' }, ...setting.options]}
          onChoose={(position) => setSetting(setting.id, position)}
        />
      ))}
    </fieldset>
  );
}
