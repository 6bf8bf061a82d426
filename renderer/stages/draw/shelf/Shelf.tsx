import { useState } from 'react';
import { useStore } from 'zustand';
import { type ShelfKind, searchKinds, searchShelf, shelfGroups } from '../../../../core/index.ts';
import { placeInView } from '../../../canvas/laying/place-in-view.ts';
import { ownKindsStore } from '../../../store/own-kinds.ts';
import { OwnKinds } from './OwnKinds.tsx';
import { RecentKinds } from './RecentKinds.tsx';
import { ShelfRow } from './ShelfRow.tsx';
import './shelf.css';

/** Every kind of unit, to be dragged to the paper or placed by a click; the user's own ones first. */
export function Shelf() {
  const [text, setText] = useState('');
  const found = searchShelf(text);
  const own = searchKinds(
    useStore(ownKindsStore, (s) => s.kinds),
    text,
  );
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
          const [first] = [...own, ...found];
          if (event.key === 'Enter' && first && text !== '') placeInView(first);
        }}
      />
      {text.trim() === '' && <RecentKinds />}
      <OwnKinds kinds={own} />
      {shelfGroups.map(({ id, name }) => (
        <Group key={id} name={name} kinds={found.filter((item) => item.kind.group === id)} />
      ))}
      {found.length + own.length === 0 && (
        <p className="soft small shelf-none">Nothing on the shelf has these words.</p>
      )}
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
            <ShelfRow item={item} />
          </li>
        ))}
      </ul>
    </section>
  );
}
