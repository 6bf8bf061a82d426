import { useId, useState } from 'react';
import { useTyped } from '../store/typed.ts';
import './fields.css';

interface Props {
  label: string;
  value: string;
  /** Called on Enter or when the field is left, with what changed; gives a sentence where it can't be taken. */
  onCommit: (value: string) => string | undefined;
  multiline?: boolean;
  /** Something short after the field: a tag, a button. */
  after?: React.ReactNode;
  figures?: boolean;
  /** Shown while the field is edited: what it takes. */
  hint?: string;
  /** Taken with every letter, where something beside it shows what it does. */
  live?: boolean;
}

/** A line of text that becomes one step when it is left; Escape puts the old text back. */
export function TextField({
  label,
  value,
  onCommit,
  multiline = false,
  after,
  figures = false,
  hint = '',
  live = false,
}: Props) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  useTyped(typed !== null && typed !== value);
  const commit = () => {
    if (typed === null) return;
    const sentence = typed === value ? undefined : onCommit(typed);
    setProblem(sentence ?? '');
    if (!sentence) setTyped(null);
  };
  const type = (text: string) => {
    setTyped(text);
    if (live) setProblem(onCommit(text) ?? '');
  };
  const shared = {
    id,
    value: typed ?? value,
    className: figures ? 'input figure' : 'input',
    // With nothing typed, undo is the document's.
    'data-settled': typed === null,
    'aria-invalid': problem !== '',
    'aria-describedby': problem ? `${id}-problem` : hint ? `${id}-hint` : undefined,
    onBlur: commit,
    onKeyDown: (event: React.KeyboardEvent) => {
      if (event.key === 'Enter' && (!multiline || event.ctrlKey)) commit();
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      setTyped(null);
      setProblem('');
    },
  };
  return (
    <div className={multiline ? 'field tall' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <div className="field-line">
        {multiline ? (
          <textarea {...shared} rows={3} onChange={(e) => type(e.target.value)} />
        ) : (
          <input {...shared} type="text" autoComplete="off" spellCheck={false} onChange={(e) => type(e.target.value)} />
        )}
        {after}
      </div>
      {hint && !problem && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {problem && (
        <p className="field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
