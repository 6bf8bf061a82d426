import type { Station } from '../../core/index.ts';
import type { Computed } from '../store/computed.ts';
import type { MixUpResult } from '../store/studies.ts';
import { failureOf } from './failure-of.ts';
import { surveyLimitMs } from './limits.ts';
import { openStudyWorker } from './open-study-worker.ts';
import { watchThread } from './watched-thread.ts';

/** Tries what a hand could do wrong to a station in a thread of its own. Returns a function that ends it; then nothing comes. */
export function mixUpsAside(station: Station, onDone: (mixUps: Computed<MixUpResult>) => void): () => void {
  const thread = watchThread(openStudyWorker<'mixUps'>);
  // Each try is a survey, and tells that it is done.
  thread.ask({ wants: 'mixUps', station }, surveyLimitMs(station), (reply) => {
    thread.end();
    if ('error' in reply)
      onDone({ is: 'missing', failure: failureOf('trying what a hand could do wrong', station, reply.error) });
    else onDone({ is: 'fresh', value: reply.answer, of: station, at: Date.now() });
  });
  return thread.end;
}
