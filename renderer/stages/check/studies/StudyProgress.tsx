import { currentStation } from '../../../store/document.ts';
import { beginStudy, type StudyPhase, type StudyStore, stopStudy } from '../../../store/studies.ts';
import { grouped } from './grouped.ts';

interface Props<T> {
  store: StudyStore<T>;
  phase: StudyPhase;
}

/** How far a study is, with what stops it and begins it again. */
export function StudyProgress<T>({ store, phase }: Props<T>) {
  if (!('done' in phase))
    return phase.is === 'resting' ? null : (
      <p className="study-progress soft">It begins when the drawing is surveyed and stands still.</p>
    );
  const { done, of } = phase;
  const words = of === 0 ? 'Surveys the drawing first …' : `${grouped(done)} of ${grouped(of)} tried`;
  return (
    <div className="study-progress">
      {phase.is === 'running' ? (
        <>
          <progress aria-label="Tried" {...(of > 0 && { value: done, max: of })} />
          <span>{words}</span>
          <button type="button" className="button" onClick={() => stopStudy(store, currentStation())}>
            Stop
          </button>
        </>
      ) : (
        <>
          <span>
            <b>Stopped.</b> {of > 0 && `${words}. `}What they come to is shown when all are tried.
          </span>
          <button type="button" className="button" onClick={() => beginStudy(store)}>
            Begin again
          </button>
        </>
      )}
    </div>
  );
}
