import { useEffect, useRef, useState } from 'react';
import './choice-dialog.css';

export { hasWords } from './has-words.ts';

/** One row of a list to choose from. */
export interface Choice {
  readonly key: string;
  /** A word on what it is: `unit`, `fits`. */
  readonly what: string;
  readonly label: string;
  /** A second, quieter line. */
  readonly note?: string;
  readonly dim?: boolean;
  readonly choose: () => void;
}

interface Props {
  readonly title: string;
  readonly fieldLabel: string;
  readonly placeholder: string;
  /** The choices for what is typed. */
  readonly choicesFor: (text: string) => readonly Choice[];
  readonly noneText: string;
  readonly onClose: () => void;
  /** Told which choice is highlighted, by its key. */
  readonly onHere?: (key: string | null) => void;
  /** What there is to say of the choice that is highlighted, once it is known. */
  readonly hereText?: string;
}

/** A box to type in over a list that follows; arrows and Enter choose. */
export function ChoiceDialog(props: Props) {
  const { title, fieldLabel, placeholder, choicesFor, noneText, onClose, onHere, hereText } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  const [text, setText] = useState('');
  const [here, setHere] = useState(0);
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    // Back to where the keyboard was, unless what was chosen took it elsewhere.
    return () => {
      if (document.activeElement === document.body && before instanceof HTMLElement) before.focus();
    };
  }, []);
  const choices = choicesFor(text);
  const at = Math.min(here, choices.length - 1);
  const current = choices[at];
  useEffect(() => {
    dialog.current?.querySelector('.choice.here')?.scrollIntoView({ block: 'nearest' });
  });
  const hereKey = current?.key ?? null;
  useEffect(() => onHere?.(hereKey), [onHere, hereKey]);
  const choose = (choice: Choice | undefined) => {
    if (!choice) return;
    choice.choose();
    onClose();
  };
  const onKeyDown = (event: React.KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1, PageDown: 8, PageUp: -8 }[event.key];
    if (step) {
      event.preventDefault();
      setHere(Math.max(0, Math.min(choices.length - 1, at + step)));
    } else if (event.key === 'Enter') {
      event.preventDefault();
      choose(current);
    }
  };
  return (
    <dialog ref={dialog} className="dialog choice-dialog" aria-label={title} onClose={onClose}>
      <input
        className="input"
        type="search"
        aria-label={fieldLabel}
        placeholder={placeholder}
        value={text}
        role="combobox"
        aria-expanded="true"
        aria-controls="choices"
        aria-activedescendant={current && `choice-${at}`}
        onChange={(event) => {
          setText(event.target.value);
          setHere(0);
        }}
        onKeyDown={onKeyDown}
      />
      <div id="choices" className="choice-list" role="listbox" aria-label={title} tabIndex={-1}>
        {choices.map((choice, i) => (
          <button
            key={choice.key}
            id={`choice-${i}`}
            type="button"
            role="option"
            tabIndex={-1}
            aria-selected={choice === current}
            className={['choice', choice === current ? 'here' : '', choice.dim ? 'dim' : ''].join(' ')}
            onClick={() => choose(choice)}
          >
            <small>{choice.what}</small>
            <span>
              {choice.label}
              {choice.note && <em>{choice.note}</em>}
            </span>
          </button>
        ))}
      </div>
      {hereText !== undefined && (
        <p className="choice-here-text" aria-live="polite">
          {hereText}
        </p>
      )}
      {choices.length === 0 && <p className="choice-none">{noneText}</p>}
    </dialog>
  );
}
