import type { Station, SurveyReport } from '../../core/index.ts';
import { resultsStore, showResults } from '../store/results.ts';
import { type ExplainThread, explainFindings } from './explain-findings.ts';
import { keepComputed } from './keep-computed.ts';
import { surveyLimitMs } from './limits.ts';
import { type Thread, watchThread } from './watched-thread.ts';

export type SurveyThread = Thread<Station, SurveyReport>;

/** Surveys the document after every edit, and looks then what act is behind what is wrong. Returns a function that ends it. */
export function runSurveys(open: () => SurveyThread, openExplain: () => ExplainThread): () => void {
  const thread = watchThread(open);
  return keepComputed<SurveyReport>({
    doing: 'surveying the station',
    begin: (station, onReply) => thread.ask(station, surveyLimitMs(station), onReply),
    stop: thread.end,
    improve: explainFindings(openExplain),
    isSame: Object.is,
    shown: resultsStore.getState,
    show: showResults,
  });
}
