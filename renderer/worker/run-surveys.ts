import type { Station, SurveyReport } from '../../core/index.ts';
import { resultsStore, showResults } from '../store/results.ts';
import { keepComputed } from './keep-computed.ts';
import { surveyLimitMs } from './limits.ts';
import { type Thread, watchThread } from './watched-thread.ts';

export type SurveyThread = Thread<Station, SurveyReport>;

/** Surveys the document after every edit. Returns a function that ends it. */
export function runSurveys(open: () => SurveyThread): () => void {
  const thread = watchThread(open);
  return keepComputed<SurveyReport>({
    doing: 'surveying the station',
    begin: (station, onReply) => thread.ask(station, surveyLimitMs(station), onReply),
    stop: thread.end,
    isSame: Object.is,
    shown: resultsStore.getState,
    show: showResults,
  });
}
