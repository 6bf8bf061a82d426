import { isUnderWay, timeOf } from '../../store/computed.ts';
import { useShownResults } from '../../store/use-store.ts';
import { AgeMark } from '../../widgets/AgeMark.tsx';
import { saveReport } from './save-report.ts';
import './trouble.css';

/** Over the drawing: that what is shown everywhere is not of the drawing as it is, why, and what to do. */
export function ResultsNotice() {
  const results = useShownResults();
  if (results.is !== 'old' && results.is !== 'missing') return null;
  const { failure } = results;
  return (
    <div className="trouble-notice" role={isUnderWay(results) ? 'status' : 'alert'}>
      <AgeMark size={18} />
      <div>
        <p>
          <b>
            {results.is === 'missing' && 'This station could not be computed.'}
            {results.is === 'old' && (failure ? 'Not computed since ' : 'Still computing since ')}
            {results.is === 'old' && `${results.since}.`}
          </b>{' '}
          {results.is === 'old'
            ? `Figures and findings are old, from ${timeOf(results.at)}, and marked so.`
            : 'Nothing is known of its figures and of what is wrong.'}
        </p>
        {failure && (
          <p>
            {failure.words} Your drawing is kept. The next change is computed afresh
            {results.is === 'old' && '; Undo brings back what was computed before'}.{' '}
            <button type="button" className="link" onClick={() => void saveReport(failure)}>
              Save a report…
            </button>
          </p>
        )}
      </div>
    </div>
  );
}
