import type { Actor } from '../../../../core/index.ts';
import { freeId } from '../fields/blank-element.ts';
import { moved, removed, replaced } from '../fields/lists.ts';
import { openRow } from '../fields/open-row.ts';
import { ActorForm } from '../forms/ActorForm.tsx';
import { ItemRow } from '../forms/ItemRow.tsx';
import { setKindFields, useEditing } from '../kind-editor.ts';

/** What switches it: keys, relays, sensing circuits. */
export function ActorsSection() {
  const { actors = [] } = useEditing().kind;
  const set = (next: Actor[]) => setKindFields({ actors: next.length > 0 ? next : undefined });
  const add = () => {
    const id = freeId(actors, 'switch');
    set([
      ...actors,
      { id, label: 'Switch', feels: { type: 'operator', label: 'Switch it' }, operateMs: 0, releaseMs: 0 },
    ]);
    openRow(`actors[${actors.length}]`);
  };
  return (
    <section aria-labelledby="kind-actors">
      <h3 id="kind-actors">What switches it</h3>
      {actors.map((actor, i) => (
        <ItemRow
          key={actor.id}
          place={`actors[${i}]`}
          title={actor.label || actor.id}
          note={actor.id}
          onRemove={() => set(removed(actors, i))}
          onMove={(by) => set(moved(actors, i, by))}
        >
          <ActorForm actor={actor} onChange={(next) => set(replaced(actors, i, next))} />
        </ItemRow>
      ))}
      <button type="button" className="button" onClick={add}>
        Add a switch
      </button>
    </section>
  );
}
