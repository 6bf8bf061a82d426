import type { ShelfKind } from '../../../../core/index.ts';
import { kindMime } from '../../../canvas/laying/kind-mime.ts';
import { placeInView } from '../../../canvas/laying/place-in-view.ts';

/** One kind of the shelf. */
export function ShelfRow({ item }: { item: ShelfKind }) {
  const { id, kind } = item;
  return (
    <button
      type="button"
      className={`shelf-row g-${kind.group}`}
      draggable
      onDragStart={(event) => {
        event.dataTransfer.setData(kindMime, id);
        event.dataTransfer.effectAllowed = 'copy';
      }}
      onClick={() => placeInView(item)}
    >
      <i aria-hidden="true" />
      <span>{kind.name}</span>
      <small>{kind.summary}</small>
    </button>
  );
}
