import { useEffect, useState } from 'react';
import { type Station, type Supposed, type SurveyReport, whatIf } from '../../../core/index.ts';
import { openWorker } from '../../worker/open-worker.ts';
import { surveyAside } from '../../worker/survey-aside.ts';

export interface WhatIfAnswer {
  /** Null while all is as drawn, and until the first answer is there. */
  readonly report: SurveyReport | null;
  readonly running: boolean;
  readonly problem: string | null;
}

const asDrawn: WhatIfAnswer = { report: null, running: false, problem: null };

/** Surveys the station with other figures in a thread of its own; neither the document nor its survey hears of it. */
export function useWhatIf(station: Station, supposed: Supposed): WhatIfAnswer {
  const [answer, setAnswer] = useState(asDrawn);
  useEffect(() => {
    const other = whatIf(station, supposed);
    if (other === station) {
      setAnswer(asDrawn);
      return;
    }
    // What is shown stays until the next is there.
    setAnswer((last) => ({ ...last, running: true }));
    return surveyAside(
      other,
      (found) =>
        setAnswer(
          'report' in found
            ? { report: found.report, running: false, problem: null }
            : { report: null, running: false, problem: found.problem },
        ),
      openWorker,
    );
  }, [station, supposed]);
  return answer;
}
