import { type Cable, fuseBreakingAmps, fuseFamilyNames, fuseRatings, limits } from '../../../../core/index.ts';
import { change } from '../../../store/document.ts';
import { QuantityField } from '../../../widgets/QuantityField.tsx';
import { SelectField } from '../../../widgets/SelectField.tsx';

type Family = NonNullable<Cable['fuse']>['family'];

const families = [
  { id: 'none', label: 'no fuse in the lead' },
  ...Object.entries(fuseFamilyNames).map(([id, label]) => ({ id, label })),
];

const sheaths = [
  { id: 'none', label: 'as it is' },
  { id: 'sheathed', label: 'in conduit or another sheath' },
];

/** A fuse in the lead: none, or its family, rating, where it sits and what it breaks; and whether the lead is sheathed. */
export function CableFuse({ cable }: { cable: Cable }) {
  const { fuse } = cable;
  const set = (next: Cable['fuse']) => change({ type: 'updateCable', id: cable.id, set: { fuse: next } });
  const choose = (family: string) => {
    if (family === 'none') return set(undefined);
    const ratings = fuseRatings[family as Family];
    const amps = ratings.find((r) => r >= (fuse?.amps ?? 3)) ?? ratings.at(-1) ?? 3;
    set({ family: family as Family, amps, atM: fuse?.atM ?? Math.min(0.1, cable.lengthM) });
  };
  return (
    <>
      <SelectField label="Fuse" value={fuse?.family ?? 'none'} options={families} onChoose={choose} />
      {fuse && (
        <>
          <QuantityField
            label="Rating"
            value={fuse.amps}
            limit={limits.fuseAmps}
            onCommit={(amps) => set({ ...fuse, amps })}
          />
          <QuantityField
            label="From its start"
            value={fuse.atM}
            limit={limits.metres}
            most={cable.lengthM}
            onCommit={(atM) => set({ ...fuse, atM })}
          />
          <QuantityField
            label="Breaks up to"
            value={fuse.breakingAmps ?? fuseBreakingAmps(fuse.amps, fuse.family)}
            limit={limits.amps}
            onCommit={(breakingAmps) => set({ ...fuse, breakingAmps })}
          />
        </>
      )}
      <SelectField
        label="Sheath"
        value={cable.sheathed ? 'sheathed' : 'none'}
        options={sheaths}
        onChoose={(id) =>
          change({ type: 'updateCable', id: cable.id, set: { sheathed: id === 'sheathed' ? true : undefined } })
        }
      />
    </>
  );
}
