import { useState } from 'react';
import { placeUnit, type ShelfKind, searchShelf, shelfGroups } from '../../../core/index.ts';
import { drawingView } from '../../canvas/drawing-view.ts';
import { kindMime } from '../../canvas/kind-mime.ts';
import { sizeOf } from '../../canvas/layout.ts';
import { change, currentStation } from '../../store/document.ts';
import { select } from '../../store/view.ts';
import './shelf.css';

/** Every kind of unit, to be dragged to the paper or placed by a click. */
export function Shelf() {
  const [text, setText] = useState('');
  const found = searchShelf(text);
  return (
    <aside className="shelf" aria-label="Shelf">
      <input
        className="input"
        type="search"
        aria-label="Find a unit on the shelf"
        placeholder="Receiver, 12 V, dummy…"
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      {shelfGroups.map(({ id, name }) => (
        <Group key={id} name={name} kinds={found.filter((item) => item.kind.group === id)} />
      ))}
      {found.length === 0 && <p className="soft small shelf-none">Nothing on the shelf has these words.</p>}
    </aside>
  );
}

function Group({ name, kinds }: { name: string; kinds: readonly ShelfKind[] }) {
  if (kinds.length === 0) return null;
  return (
    <section>
      <h2>{name}</h2>
      <ul>
        {kinds.map((item) => (
          <li key={item.id}>
            <Row item={item} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Row({ item: { id, kind } }: { item: ShelfKind }) {
  return (
    <button
      type="button"
      className={`shelf-row g-${kind.group}`}
      draggable
      onDragStart={(event) => {
        event.dataTransfer.setData(kindMime, id);
        event.dataTransfer.effectAllowed = 'copy';
      }}
      onClick={() => place(id, kind)}
    >
      <i aria-hidden="true" />
      <span>{kind.name}</span>
      <small>{kind.summary}</small>
    </button>
  );
}

function place(id: string, kind: ShelfKind['kind']) {
  const { width, height } = sizeOf(kind, kind.name);
  const before = currentStation();
  change(placeUnit(before, id, drawingView.freePlace(width, height)));
  select({
    units: currentStation()
      .units.slice(before.units.length)
      .map((u) => u.id),
  });
}
