import { type ReactNode, useEffect } from 'react';
import { useStore } from 'zustand';
import { saveReport } from '../../../app/trouble/save-report.ts';
import { type Computed, failureIn, ofAnyAge, timeOf } from '../../../store/computed.ts';
import { type StudyState, type StudyStore, viewStudy } from '../../../store/studies.ts';
import { AgeMark } from '../../../widgets/AgeMark.tsx';
import { AgeContext, oldWords } from '../../../widgets/age-words.ts';
import { StudyProgress } from './StudyProgress.tsx';
import './studies.css';

interface Props<T> {
  store: StudyStore<T>;
  title: string;
  /** What is tried, one at a time. */
  about: string;
  children: (value: T) => ReactNode;
}

/** A study that takes its time: how far it is, and what it came to, with its age. It runs while this is in view. */
export function StudyBox<T>({ store, title, about, children }: Props<T>) {
  const { phase, shown } = useStore(store);
  useEffect(() => {
    viewStudy(store, true);
    return () => viewStudy(store, false);
  }, [store]);
  const value = ofAnyAge(shown);
  return (
    <>
      <div className="sheet-head findings-title">
        <h2 tabIndex={-1}>{title}</h2>
      </div>
      <p className="study-about">{about}</p>
      <StudyProgress store={store} phase={phase} />
      <StudyAge phase={phase} shown={shown} />
      {value !== null && <AgeContext value={oldWords(shown)}>{children(value)}</AgeContext>}
    </>
  );
}

/** That nothing was tried, or not on the drawing as it is, and why. */
function StudyAge<T>({ phase, shown }: Pick<StudyState<T>, 'phase' | 'shown'>) {
  const failure = failureIn(shown);
  const words = ageWords(shown);
  if (shown.is === 'fresh' || (phase.is !== 'resting' && shown.is === 'computing')) return null;
  return (
    <p className="age-line">
      <AgeMark />
      <span>
        {words}
        {failure && (
          <>
            {' '}
            {failure.words}{' '}
            <button type="button" className="link" onClick={() => void saveReport(failure)}>
              Save a report…
            </button>
          </>
        )}
      </span>
    </p>
  );
}

function ageWords<T>(shown: Computed<T>): string {
  if (shown.is === 'old') return `Not tried since ${shown.since}. What follows is old, from ${timeOf(shown.at)}.`;
  return 'Not tried: nothing is known here; that is not to say that nothing is wrong.';
}
