import { type Computed, failureIn } from '../../store/computed.ts';
import { saveReport } from './save-report.ts';

/** Why something is not computed, with the report to send; nothing where it is. */
export function FailureLine<T>({ of }: { of: Computed<T> }) {
  const failure = failureIn(of);
  if (!failure) return null;
  return (
    <p className="small" role="alert">
      {failure.words}{' '}
      <button type="button" className="link screen-only" onClick={() => void saveReport(failure)}>
        Save a report…
      </button>
    </p>
  );
}
