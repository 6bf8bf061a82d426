import { failureStore, mixUpStore, type StudyStore } from '../store/studies.ts';
import { keepStudied } from './keep-studied.ts';
import { surveyLimitMs } from './limits.ts';
import type { Studied, StudyName, StudyThread } from './study-messages.ts';
import { watchThread } from './watched-thread.ts';

/** Studies the document: what a hand could do wrong, and what could fail. Returns a function that ends it. */
export function runStudies(open: <N extends StudyName>() => StudyThread<N>): () => void {
  const ends = [
    runStudy('mixUps', 'trying what a hand could do wrong', mixUpStore, open<'mixUps'>),
    runStudy('failures', 'trying what could fail', failureStore, open<'failures'>),
  ];
  return () => {
    for (const end of ends) end();
  };
}

function runStudy<N extends StudyName>(
  wants: N,
  doing: string,
  store: StudyStore<Studied[N]>,
  open: () => StudyThread<N>,
): () => void {
  const thread = watchThread(open);
  return keepStudied<Studied[N]>({
    doing,
    // Each try is a survey, and tells that it is done.
    begin: (station, onReply, onProgress) =>
      thread.ask({ wants, station }, surveyLimitMs(station), onReply, onProgress),
    stop: thread.end,
    isSame: Object.is,
    store,
  });
}
