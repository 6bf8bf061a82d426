import type { Finding, Station, SurveyReport } from '../../core/index.ts';
import type { Good } from '../store/computed.ts';
import { surveyLimitMs } from './limits.ts';
import { type Thread, watchThread } from './watched-thread.ts';

export type ExplainThread = Thread<Station, readonly Finding[]>;

/** A survey is taken that often for one answer. */
const surveys = 200;

/**
 * Puts what a hand did wrong on top of the dangers and faults of a report, aside from the surveys, which don't wait for
 * it. Where that comes to nothing the report stays as it is. Each call returns a function that ends its search.
 */
export function explainFindings(open: () => ExplainThread) {
  const thread = watchThread(open);
  return ({ value, of }: Good<SurveyReport>, onBetter: (report: SurveyReport) => void): (() => void) => {
    const isWrong = value.findings.some((f) => f.accepted === undefined && ['danger', 'fault'].includes(f.severity));
    if (!isWrong) return () => {};
    thread.ask(of, surveys * surveyLimitMs(of), (reply) => {
      // The report is good as it is: what can't be read must not take its place.
      if ('answer' in reply && Array.isArray(reply.answer)) onBetter({ ...value, findings: reply.answer });
    });
    return thread.end;
  };
}
