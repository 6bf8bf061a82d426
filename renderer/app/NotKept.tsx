import { useState } from 'react';
import { useStore } from 'zustand';
import './not-kept.css';
import { choicesStore } from '../shell/keep-choice.ts';
import { save } from './document/document-actions.ts';
import { keepingStore } from './document/keep-work.ts';

/** What this window can't keep, said once, with the way to save; nothing else waits for it. */
export function NotKept() {
  const work = useStore(keepingStore, (s) => s.problem);
  const choices = useStore(choicesStore, (s) => s.failed);
  const [read, setRead] = useState('');
  const text = [
    work && `${work} What you don’t save is gone if the window closes or the program stops: save often.`,
    choices && 'Your own unit kinds, the theme and the label sheet are kept only as long as this window is open.',
  ]
    .filter(Boolean)
    .join(' ');
  if (text === '' || text === read) return null;
  return (
    <section className="not-kept" aria-label="What is not kept">
      <p role="status">{text}</p>
      <button type="button" className="button" onClick={() => setRead(text)}>
        Understood
      </button>
      {work && (
        <button type="button" className="button main" onClick={() => void save()}>
          Save now
        </button>
      )}
    </section>
  );
}
