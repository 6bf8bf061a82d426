import { groupNames, type UnitKind, unitGroups } from '../../../../core/index.ts';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { setKindFields, useEditing } from '../kind-editor.ts';

const groups = unitGroups.map((id) => ({ id, label: groupNames[id] }));
const list = (text: string, by: RegExp): string[] | undefined => {
  const items = text
    .split(by)
    .map((item) => item.trim())
    .filter(Boolean);
  return items.length > 0 ? items : undefined;
};

/** What it is called, where it is on the shelf, what it says of itself. */
export function WordsSection() {
  const { kind } = useEditing();
  const set = (fields: Partial<UnitKind>) => void setKindFields(fields);
  return (
    <section aria-labelledby="kind-words" id="kind-name">
      <h3 id="kind-words">Name and words</h3>
      <TextField label="Name" value={kind.name} live onCommit={(name) => set({ name })} />
      <SelectField
        label="Group"
        value={kind.group}
        options={groups}
        onChoose={(id) => set({ group: id as UnitKind['group'] })}
      />
      <TextField label="In one line" value={kind.summary} sort="text" live onCommit={(summary) => set({ summary })} />
      <TextField
        label="Search words"
        value={(kind.words ?? []).join(', ')}
        onCommit={(text) => set({ words: list(text, /,/) })}
      />
      <TextField
        label="Figures from"
        sort="text"
        value={kind.source}
        onCommit={(source) =>
          source.trim() === '' ? 'Say where its figures are from.' : set({ source: source.trim() })
        }
      />
      <TextField
        label="Cautions, one a line"
        value={(kind.cautions ?? []).join('\n')}
        onCommit={(text) => set({ cautions: list(text, /\n/) })}
        multiline
      />
    </section>
  );
}
