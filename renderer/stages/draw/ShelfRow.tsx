import type { ShelfKind } from '../../../core/index.ts';
import { drawingView } from '../../canvas/drawing-view.ts';
import { kindMime } from '../../canvas/kind-mime.ts';
import { sizeOf } from '../../canvas/layout.ts';
import { placeKind } from '../../store/place-kind.ts';

/** One kind of the shelf. */
export function ShelfRow({ item: { id, kind } }: { item: ShelfKind }) {
  const place = () => {
    const { width, height } = sizeOf(kind, kind.name);
    placeKind(id, drawingView.freePlace(width, height));
  };
  return (
    <button
      type="button"
      className={`shelf-row g-${kind.group}`}
      draggable
      onDragStart={(event) => {
        event.dataTransfer.setData(kindMime, id);
        event.dataTransfer.effectAllowed = 'copy';
      }}
      onClick={place}
    >
      <i aria-hidden="true" />
      <span>{kind.name}</span>
      <small>{kind.summary}</small>
    </button>
  );
}
