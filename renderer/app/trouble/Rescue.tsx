import { useEffect, useRef, useState } from 'react';
import { currentStation, isEdited, undoStep } from '../../store/document.ts';
import { useDocument } from '../../store/use-store.ts';
import { QuestionDialog } from '../dialogs/QuestionDialog.tsx';
import { save } from '../document/document-actions.ts';
import { wordsOf } from './ErrorNotice.tsx';
import { saveReport } from './save-report.ts';
import './trouble.css';

interface Props {
  thrown: unknown;
  onAgain: () => void;
}

/** In place of a screen that can't be drawn: the document is there and can be saved. */
export function Rescue({ thrown, onAgain }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const station = currentStation();
  const edited = useDocument(isEdited);
  const last = useDocument((d) => d.history.past.at(-1)?.name);
  const [problem, setProblem] = useState('');
  useEffect(() => heading.current?.focus(), []);
  const saveNow = () => {
    setProblem('');
    save().catch((error) => setProblem(`It could not be saved: ${wordsOf(error)}.`));
  };
  return (
    <main className="rescue">
      <h1 ref={heading} tabIndex={-1}>
        The screen met a fault of the program
      </h1>
      <p>
        Your drawing is kept: “{station.title}”, {station.units.length} units and {station.cables.length} cables,{' '}
        {edited ? 'not saved yet' : 'saved as it is'}. Save it, then show the screen again.
      </p>
      <p className="rescue-buttons">
        <button type="button" className="button main" onClick={saveNow}>
          Save
        </button>
        <button type="button" className="button" onClick={onAgain}>
          Show the screen again
        </button>
        {last !== undefined && (
          <button
            type="button"
            className="button"
            onClick={() => {
              undoStep();
              onAgain();
            }}
          >
            Undo “{last}” and show it
          </button>
        )}
        <button
          type="button"
          className="button"
          onClick={() => void saveReport({ doing: 'drawing the screen', error: thrown, station })}
        >
          Save a report…
        </button>
      </p>
      {problem && <p role="alert">{problem}</p>}
      <p className="soft small">
        What went wrong: {wordsOf(thrown)}. The report is a text with this and with the drawing, for you to read and to
        send to those who make the program, if you like.
      </p>
      <QuestionDialog />
    </main>
  );
}
