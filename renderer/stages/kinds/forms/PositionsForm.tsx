import { SelectField } from '../../../widgets/SelectField.tsx';
import { withPresent } from '../fields/contact-choices.ts';
import { useEditing } from '../kind-editor.ts';

type Positions = Record<string, string>;

interface Props {
  value: Positions | undefined;
  onChange: (value: Positions | undefined) => void;
}

/** At which positions of the settings something is so; settings that are gone can still be let go of. */
export function PositionsForm({ value = {}, onChange }: Props) {
  const { settings = [] } = useEditing().kind;
  const gone = Object.keys(value)
    .filter((id) => !settings.some((s) => s.id === id))
    .map((id) => ({ id, label: `${id}: not there`, options: [] }));
  const choose = (id: string, position: string) => {
    const rest = Object.entries(value).filter(([other]) => other !== id);
    const next = position === '' ? rest : [...rest, [id, position] as const];
    onChange(next.length > 0 ? Object.fromEntries(next) : undefined);
  };
  return [...settings, ...gone].map((setting) => (
    <SelectField
      key={setting.id}
      label={setting.label || setting.id}
      value={value[setting.id] ?? ''}
      options={withPresent([{ id: '', label: 'any position' }, ...setting.options], value[setting.id] ?? '')}
      onChoose={(position) => choose(setting.id, position)}
    />
  ));
}
