import type { Station, SurveyReport } from '../../core/index.ts';
import { documentStore } from '../store/document.ts';
import { resultsStore } from '../store/results.ts';

export type SurveyAnswer = { readonly report: SurveyReport } | { readonly problem: string };

/** What the runner needs of a Worker. */
export interface SurveyWorker {
  postMessage(station: Station): void;
  terminate(): void;
  onmessage: ((event: { data: SurveyAnswer }) => void) | null;
  onerror: ((event: { message: string; preventDefault(): void }) => void) | null;
}

/**
 * Surveys the document after every edit, the newest one only: while a survey runs, edits replace each other as the
 * one that is next, so nothing queues up. Returns a function that ends it.
 */
export function runSurveys(openWorker: () => SurveyWorker): () => void {
  let worker = listen(openWorker());
  let busyWith: Station | null = null;

  function listen(fresh: SurveyWorker): SurveyWorker {
    fresh.onmessage = ({ data }) => finish(data);
    fresh.onerror = (event) => {
      event.preventDefault();
      worker.terminate();
      worker = listen(openWorker());
      finish({ problem: event.message || 'the computation stopped' });
    };
    return fresh;
  }

  function finish(answer: SurveyAnswer) {
    const station = busyWith;
    busyWith = null;
    if ('report' in answer) resultsStore.setState({ report: answer.report, station, problem: null });
    else
      resultsStore.setState({
        station,
        problem: `This station could not be computed: ${answer.problem}. What is shown is from before.`,
      });
    next();
  }

  function next() {
    const { station } = documentStore.getState().history;
    const current = station === (busyWith ?? resultsStore.getState().station);
    if (!busyWith && !current) {
      busyWith = station;
      worker.postMessage(station);
    }
    const running = busyWith !== null;
    if (resultsStore.getState().running !== running) resultsStore.setState({ running });
  }

  const end = documentStore.subscribe(next);
  next();
  return () => {
    end();
    worker.terminate();
  };
}
