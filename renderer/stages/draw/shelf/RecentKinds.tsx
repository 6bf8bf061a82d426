import { useStore } from 'zustand';
import { placeInView } from '../../../canvas/laying/place-in-view.ts';
import { ownKindsStore } from '../../../store/own-kinds.ts';
import { shelfKind } from '../../../store/place-kind.ts';
import { recentStore } from '../../../store/recent-kinds.ts';

/** The kinds that were placed last, to be placed again. */
export function RecentKinds() {
  const ids = useStore(recentStore, (s) => s.ids);
  // A kind of one's own may have another name by now, or be gone.
  useStore(ownKindsStore, (s) => s.kinds);
  const kinds = ids.flatMap((id) => {
    const kind = shelfKind(id);
    return kind ? [{ id, kind }] : [];
  });
  if (kinds.length === 0) return null;
  return (
    <section>
      <h2>Recent</h2>
      <ul className="shelf-recent">
        {kinds.map(({ id, kind }) => (
          <li key={id}>
            <button
              type="button"
              className={`shelf-again g-${kind.group}`}
              aria-label={`Place again: ${kind.name}`}
              title={kind.name}
              onClick={() => placeInView({ id, kind })}
            >
              {kind.name.split(',')[0]}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
