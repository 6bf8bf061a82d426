import { type Condition, withoutUndefined } from '../../../../core/index.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { useEditing } from '../kind-editor.ts';
import { PositionsForm } from './PositionsForm.tsx';

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
  const { actors = [] } = useEditing().kind;
  const known = (list: readonly string[] = []) => list.filter((id) => !actors.some((a) => a.id === id));
  const strays = [...known(value.on), ...known(value.off)];
  const switches = [
    ...actors.map((a) => ({ id: a.id, name: a.label || a.id })),
    ...strays.map((id) => ({ id, name: `${id}: not there` })),
  ];
  const names = (id: string) => switches.find((s) => s.id === id)?.name ?? id;
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
  return (
    <details className="kind-when">
      <summary>
        {label}: <strong>{conditionWords(value, names)}</strong>
      </summary>
      <div>
        <SelectField
          label="Power"
          value={value.powered === undefined ? '' : String(value.powered)}
          options={power}
          onChoose={(id) => set({ powered: id === '' ? undefined : id === 'true' })}
        />
        {switches.map(({ id, name }) => (
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
        <PositionsForm value={value.settings} onChange={(settings) => set({ settings })} />
      </div>
    </details>
  );
}

/** `RF on, with power`, or `always`. */
function conditionWords(
  { on = [], off = [], powered, settings = {} }: Condition,
  name: (id: string) => string,
): string {
  const words = [
    ...on.map((id) => `${name(id)} on`),
    ...off.map((id) => `${name(id)} off`),
    ...(powered === undefined ? [] : [powered ? 'with power' : 'without power']),
    ...Object.entries(settings).map(([setting, position]) => `${setting} at ${position}`),
  ];
  return words.length > 0 ? words.join(', ') : 'always';
}
