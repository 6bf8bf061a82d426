import { useState } from 'react';
import { type ShelfKind, searchShelf, shelfGroups } from '../../../core/index.ts';
import { kindMime } from '../../canvas/kind-mime.ts';
import { placeInView } from '../../canvas/place-in-view.ts';
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
        onKeyDown={(event) => {
          const [first] = found;
          if (event.key === 'Enter' && first && text !== '') placeInView(first);
        }}
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

function Row({ item }: { item: ShelfKind }) {
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
