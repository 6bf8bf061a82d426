import { useStore } from 'zustand';
import { currentStation } from '../../store/document.ts';
import { saveReport } from './save-report.ts';
import { forgetError, screenErrors } from './screen-errors.ts';
import './trouble.css';

/** An error that nobody caught, in a sentence, with the report to send. */
export function ErrorNotice() {
  const error = useStore(screenErrors, (s) => s.error);
  if (!error) return null;
  const { thrown } = error;
  const report = () => saveReport({ doing: 'using the screen', error: thrown, station: currentStation() });
  return (
    <div className="trouble-notice" role="alert">
      <div>
        <p>
          <b>A fault of the program.</b> What you last did may not have been done: {wordsOf(thrown)}. Your drawing is
          kept; save it to be safe.
        </p>
        <p>
          <button type="button" className="link" onClick={() => void report()}>
            Save a report…
          </button>{' '}
          <button type="button" className="link" onClick={forgetError}>
            Close
          </button>
        </p>
      </div>
    </div>
  );
}

export const wordsOf = (thrown: unknown): string =>
  (thrown instanceof Error ? thrown.message : String(thrown)).replace(/\.$/, '');
