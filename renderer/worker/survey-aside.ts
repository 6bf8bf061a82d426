import type { Station, SurveyReport } from '../../core/index.ts';
import { surveyLimitMs } from './limits.ts';
import type { SurveyThread } from './run-surveys.ts';
import { type Reply, watchThread } from './watched-thread.ts';

/**
 * Surveys a station that is not the document, beside the running survey and without touching its results. Returns a
 * function that ends it; then no reply comes.
 */
export function surveyAside(
  station: Station,
  onReply: (reply: Reply<SurveyReport>) => void,
  open: () => SurveyThread,
): () => void {
  const thread = watchThread(open);
  thread.ask(station, surveyLimitMs(station), (reply) => {
    thread.end();
    onReply(reply);
  });
  return thread.end;
}
