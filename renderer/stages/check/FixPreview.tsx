import { useEffect, useId, useMemo, useState } from 'react';
import { describeChange, edit, type Finding, type Fix, type SurveyReport } from '../../../core/index.ts';
import { change } from '../../store/document.ts';
import { useResults, useStation } from '../../store/use-store.ts';
import { keepMarked, lookAt, pointAt } from '../../store/view.ts';
import { failureOf } from '../../worker/failure-of.ts';
import { openWorker } from '../../worker/open-worker.ts';
import { surveyAside } from '../../worker/survey-aside.ts';
import type { Reply } from '../../worker/watched-thread.ts';
import { fixEffect } from './fix-effect.ts';

/** A fix before it is done: what it changes, where, and what it does to the findings. Doing it is one step. */
export function FixPreview({ finding, fix }: { finding: Finding; fix: Fix }) {
  const id = useId();
  const station = useStation();
  // Until the survey of the newest document is there, a fix may be one for the document before it.
  const age = useResults((r) => r.is);
  const isOutdated = age !== 'fresh';
  const [shown, setShown] = useState(false);
  const lines = useMemo(() => describeChange(station, fix.change), [station, fix]);
  const places = useMemo(() => lines.flatMap((line) => line.at), [lines]);
  useEffect(() => {
    if (!shown) return;
    keepMarked(places);
    return () => keepMarked([]);
  }, [shown, places]);
  const preview = () => {
    if (!shown) lookAt(places);
    setShown(!shown);
  };
  const apply = () => {
    if (isOutdated) return;
    setShown(false);
    change({ type: 'all', name: fix.name, changes: [fix.change] });
  };
  const mark = () => pointAt(places);
  return (
    <section
      className={shown ? 'fix shown' : 'fix'}
      aria-labelledby={id}
      onPointerEnter={mark}
      onPointerLeave={() => pointAt(finding.at)}
      onFocus={mark}
      onBlur={() => pointAt([])}
    >
      <h4 id={id}>{fix.name}</h4>
      <ul aria-label="What it changes">
        {lines.map(({ words }) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <span className="fix-buttons">
        <button type="button" className="button" aria-expanded={shown} aria-describedby={id} onClick={preview}>
          Preview
        </button>
        <button
          type="button"
          className="button main"
          aria-disabled={isOutdated}
          aria-describedby={id}
          data-keep={`fix ${finding.id}`}
          onClick={apply}
        >
          Do it
        </button>
        {age === 'old' && <small className="soft">once it is computed</small>}
      </span>
      {shown && !isOutdated && <Effect finding={finding} fix={fix} />}
    </section>
  );
}

/** Computed aside, with the fix made, while the document stays as it is. */
function Effect({ finding, fix }: { finding: Finding; fix: Fix }) {
  const station = useStation();
  const before = useResults((r) => (r.is === 'fresh' ? r.value.findings : null));
  const [words, setWords] = useState('Computing what it does to the findings…');
  useEffect(() => {
    if (!before) return;
    const other = edit(station, fix.change);
    const tell = (reply: Reply<SurveyReport>) =>
      setWords(
        'answer' in reply
          ? fixEffect(finding, before, reply.answer.findings)
          : `What it does to the findings is not known. ${failureOf('trying a fix', other, reply.error).words}`,
      );
    return surveyAside(other, tell, openWorker);
  }, [station, fix, finding, before]);
  return <p role="status">{words}</p>;
}
