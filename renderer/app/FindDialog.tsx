import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { useResults, useStation } from '../store/use-store.ts';
import { showPlaces } from '../store/view.ts';
import './dialog.css';
import { type FoundItem, findItems } from './find-items.ts';
import { closeFind, findStore } from './find-store.ts';

/** Finds units, ports, cables and findings by name and shows them on the drawing. */
export function FindDialog() {
  const open = useStore(findStore, (s) => s.open);
  return open && <Open />;
}

function Open() {
  const dialog = useRef<HTMLDialogElement>(null);
  const station = useStation();
  const report = useResults((r) => r.report);
  const [text, setText] = useState('');
  const [here, setHere] = useState(0);
  useEffect(() => dialog.current?.showModal(), []);
  const items = findItems(station, report, text);
  const current = items[Math.min(here, items.length - 1)];
  const choose = (item: FoundItem | undefined) => {
    if (!item) return;
    closeFind();
    showPlaces(item.places);
  };
  const onKeyDown = (event: React.KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step) {
      event.preventDefault();
      setHere((i) => Math.max(0, Math.min(items.length - 1, i + step)));
    } else if (event.key === 'Enter') {
      event.preventDefault();
      choose(current);
    }
  };
  return (
    <dialog ref={dialog} className="dialog find" aria-label="Find" onClose={closeFind}>
      <input
        className="input"
        type="search"
        aria-label="Find a unit, port, cable or finding"
        placeholder="A unit, port, cable or finding"
        value={text}
        role="combobox"
        aria-expanded="true"
        aria-controls="found"
        aria-activedescendant={current && `found-${items.indexOf(current)}`}
        onChange={(event) => {
          setText(event.target.value);
          setHere(0);
        }}
        onKeyDown={onKeyDown}
      />
      <div id="found" className="find-list" role="listbox" aria-label="Found" tabIndex={-1}>
        {items.map((item, i) => (
          <button
            key={item.key}
            id={`found-${i}`}
            type="button"
            role="option"
            tabIndex={-1}
            aria-selected={item === current}
            className={item === current ? 'find-row here' : 'find-row'}
            onClick={() => choose(item)}
          >
            <small>{item.what}</small>
            <span>{item.label}</span>
          </button>
        ))}
      </div>
      {items.length === 0 && <p className="find-none">Nothing on this drawing has these words.</p>}
    </dialog>
  );
}
