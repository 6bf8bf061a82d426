import { useEffect, useState } from 'react';
import { edit, type PortRef, type SurveyReport } from '../../../core/index.ts';
import { useResults, useStation } from '../../store/use-store.ts';
import { failureOf } from '../../worker/failure-of.ts';
import { openWorker } from '../../worker/open-worker.ts';
import { surveyAside } from '../../worker/survey-aside.ts';
import type { Reply } from '../../worker/watched-thread.ts';
import { stepTo } from './laying.ts';
import { layingEffect } from './laying-effect.ts';

/** For so long one rests on a port before it is worked out what a cable to it would do. */
const restMs = 300;

/**
 * What the cable that is being laid would do to the findings if it ended at a port, in a sentence; empty until that is
 * known. Worked out aside, and given up when the port changes. Say the same object as long as it is the same port.
 */
export function useForetold(to: PortRef | null): string {
  const station = useStation();
  const before = useResults((r) => (r.is === 'fresh' && r.of === station ? r.value.findings : null));
  const [words, setWords] = useState('');
  useEffect(() => {
    setWords('');
    if (!to || !before) return;
    let end = () => {};
    const rest = setTimeout(() => {
      const step = stepTo(to);
      if (!step) return;
      const other = edit(station, step);
      setWords('Computing what it would do …');
      const tell = (reply: Reply<SurveyReport>) =>
        setWords(
          'answer' in reply
            ? layingEffect(before, reply.answer.findings)
            : `What it would do is not known. ${failureOf('trying a cable', other, reply.error).words}`,
        );
      end = surveyAside(other, tell, openWorker);
    }, restMs);
    return () => {
      clearTimeout(rest);
      end();
    };
  }, [station, before, to]);
  return words;
}
