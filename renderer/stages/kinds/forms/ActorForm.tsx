import { type Actor, limits, withoutUndefined } from '../../../../core/index.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';
import { TextField } from '../../../widgets/TextField.tsx';
import { removed, replaced } from '../fields/lists.ts';
import { FeelForm } from './FeelForm.tsx';
import { FlagField } from './FlagField.tsx';
import { PositionsForm } from './PositionsForm.tsx';

interface Props {
  actor: Actor;
  onChange: (actor: Actor) => void;
}

const means = [
  { id: '', label: 'nothing further' },
  { id: 'keys', label: 'the operator keys' },
  { id: 'sends', label: 'the transmitter sends' },
  { id: 'mutes', label: 'the receiver is silent' },
  { id: 'changesOver', label: 'the antenna is over' },
];
const held = [
  ['ms', 'Held for', limits.milliseconds],
  ['dits', 'Held for dits', limits.dits],
  ['wordSpaces', 'Held for word spaces', limits.wordSpaces],
] as const;

/** One thing that switches: what it feels, how fast, what its being on means. */
export function ActorForm({ actor, onChange }: Props) {
  const set = (fields: Partial<Record<keyof Actor, unknown>>) =>
    void onChange(withoutUndefined({ ...actor, ...fields }) as Actor);
  const feels = [actor.feels].flat();
  const setFeels = (next: typeof feels) => set({ feels: next.length === 1 ? next[0] : next });
  const setHang = (field: string, value: number) => {
    const hang = Object.entries({ ...actor.hang, [field]: value }).filter(([, v]) => v !== 0);
    set({ hang: hang.length > 0 ? Object.fromEntries(hang) : undefined });
  };
  return (
    <>
      <TextField label="Name" value={actor.label} live onCommit={(label) => set({ label })} />
      {feels.map((feel, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: what is felt has nothing else to tell it apart
        <fieldset key={i} className="kind-subrow">
          <legend className="sr-only">What it feels{feels.length > 1 ? `, ${i + 1}` : ''}</legend>
          <FeelForm feel={feel} onChange={(next) => setFeels(replaced(feels, i, next))} />
          {feels.length > 1 && (
            <button type="button" className="link small" onClick={() => setFeels(removed(feels, i))}>
              Remove
            </button>
          )}
        </fieldset>
      ))}
      <button
        type="button"
        className="link small"
        onClick={() => setFeels([...feels, { type: 'operator', label: '' }])}
      >
        Or feels something else
      </button>
      <QuantityField
        label="On after"
        value={actor.operateMs}
        limit={limits.milliseconds}
        onCommit={(operateMs) => set({ operateMs })}
      />
      <QuantityField
        label="Off after"
        value={actor.releaseMs}
        limit={limits.milliseconds}
        onCommit={(releaseMs) => set({ releaseMs })}
      />
      <QuantityField
        label="Bounces for"
        value={actor.bounceMs ?? 0}
        limit={limits.milliseconds}
        onCommit={(ms) => set({ bounceMs: ms > 0 ? ms : undefined })}
      />
      {held.map(([field, label, limit]) => (
        <QuantityField
          key={field}
          label={label}
          value={actor.hang?.[field] ?? 0}
          limit={limit}
          onCommit={(value) => setHang(field, value)}
        />
      ))}
      <SelectField
        label="On means"
        value={actor.does ?? ''}
        options={means}
        onChoose={(id) => set({ does: id === '' ? undefined : id })}
      />
      <PositionsForm value={actor.when?.settings} onChange={(settings) => set({ when: settings && { settings } })} />
      <FlagField
        label="Works without power"
        value={actor.unpowered === true}
        onChange={(on) => set({ unpowered: on || undefined })}
      />
    </>
  );
}
