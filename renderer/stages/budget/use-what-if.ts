import { useEffect, useState } from 'react';
import { type Station, type Supposed, type SurveyReport, whatIf } from '../../../core/index.ts';
import type { ComputingFailure } from '../../store/computed.ts';
import { failureOf } from '../../worker/failure-of.ts';
import { quietMs } from '../../worker/keep-computed.ts';
import { openWorker } from '../../worker/open-worker.ts';
import { surveyAside } from '../../worker/survey-aside.ts';

/** What other figures lead to. `waiting` where the drawn ones are not known, to tell them apart from. */
export type WhatIfAnswer =
  | { readonly is: 'as drawn' | 'waiting' | 'computing' }
  /** Running while the next figures are being tried: for a moment the last ones stay. */
  | { readonly is: 'there'; readonly report: SurveyReport; readonly running: boolean }
  | { readonly is: 'missing'; readonly failure: ComputingFailure };

/**
 * Surveys the station with other figures in a thread of its own; neither the document nor its survey hears of it. Not
 * while the drawn ones are old: the two would be of two drawings.
 */
export function useWhatIf(station: Station, supposed: Supposed, isOld: boolean): WhatIfAnswer {
  const [answer, setAnswer] = useState<WhatIfAnswer>({ is: 'as drawn' });
  useEffect(() => {
    const other = whatIf(station, supposed);
    if (other === station || isOld) {
      setAnswer({ is: other === station ? 'as drawn' : 'waiting' });
      return;
    }
    setAnswer((last) => (last.is === 'there' ? { ...last, running: true } : { is: 'computing' }));
    const slow = setTimeout(() => setAnswer({ is: 'computing' }), quietMs);
    const end = surveyAside(
      other,
      (reply) => {
        clearTimeout(slow);
        setAnswer(
          'answer' in reply
            ? { is: 'there', report: reply.answer, running: false }
            : { is: 'missing', failure: failureOf('trying other figures', other, reply.error) },
        );
      },
      openWorker,
    );
    return () => {
      clearTimeout(slow);
      end();
    };
  }, [station, supposed, isOld]);
  return answer;
}
