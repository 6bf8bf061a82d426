import type { Station } from '../../core/index.ts';
import type { SurveyAnswer, SurveyWorker } from './survey-runner.ts';

/**
 * Surveys a station that is not the document, beside the running survey and without touching its results. Returns a
 * function that ends it; then no answer comes.
 */
export function surveyAside(
  station: Station,
  onAnswer: (answer: SurveyAnswer) => void,
  openWorker: () => SurveyWorker,
): () => void {
  const worker = openWorker();
  let ended = false;
  const end = () => {
    ended = true;
    worker.terminate();
  };
  const finish = (answer: SurveyAnswer) => {
    if (ended) return;
    end();
    onAnswer(answer);
  };
  worker.onmessage = ({ data }) => finish(data);
  worker.onerror = (event) => {
    event.preventDefault();
    finish({ problem: event.message || 'the computation stopped' });
  };
  worker.postMessage(station);
  return end;
}
