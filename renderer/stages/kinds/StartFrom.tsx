import { useState } from 'react';
import { useStore } from 'zustand';
import { connectors, searchKinds, searchShelf, type WholeKind } from '../../../core/index.ts';
import { ask } from '../../app/dialogs/questions.ts';
import { ownKindsStore } from '../../store/own-kinds.ts';
import { editorStore, startFrom, useEditing } from './kind-editor.ts';

const most = 6;

/** Takes a kind of the shelf to begin with, found by the same words as there. */
export function StartFrom() {
  const { kind, before } = useEditing();
  const own = useStore(ownKindsStore, (s) => s.kinds);
  const [text, setText] = useState('');
  const found =
    text.trim() === ''
      ? []
      : [...searchKinds(own, text), ...searchShelf(text).map((item) => ({ ...item, connectors }))].slice(0, most);
  const take = async (whole: WholeKind) => {
    const choice =
      kind === before ||
      (await ask({
        title: 'Start again from another kind?',
        text: `What was entered so far gives way to “${whole.kind.name}”.`,
        choices: [
          { id: 'stay', label: 'Cancel' },
          { id: 'start', label: 'Start again' },
        ],
      })) === 'start';
    if (!choice || !editorStore.getState().editing) return;
    startFrom(whole);
    setText('');
  };
  return (
    <section className="kind-start" aria-label="Start from">
      <input
        className="input"
        type="search"
        aria-label="Start from a kind of the shelf"
        placeholder="Start from a kind of the shelf: receiver, 12 V, dummy…"
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      {found.length > 0 && (
        <ul>
          {found.map((item) => (
            <li key={item.id}>
              <button type="button" className="kind-start-row" onClick={() => void take(item)}>
                <span>{item.kind.name}</span> <small>{item.kind.summary}</small>
              </button>
            </li>
          ))}
        </ul>
      )}
      {text.trim() !== '' && found.length === 0 && <p className="soft small">Nothing on the shelf has these words.</p>}
    </section>
  );
}
