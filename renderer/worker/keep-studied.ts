import { shallow } from 'zustand/shallow';
import type { Station } from '../../core/index.ts';
import { ageOf, isUnderWay } from '../store/computed.ts';
import { documentStore } from '../store/document.ts';
import { resultsStore } from '../store/results.ts';
import type { StudyPhase, StudyStore } from '../store/studies.ts';
import { newClock } from './clock.ts';
import { failureOf } from './failure-of.ts';
import { Outcomes } from './outcomes.ts';
import type { Progress, Reply } from './watched-thread.ts';

/** For so long the document stands still, once it is surveyed, before a study of it begins. */
export const calmMs = 500;

interface Work<T> {
  /** What it is, to follow “while”. */
  readonly doing: string;
  readonly begin: (station: Station, onReply: (reply: Reply<T>) => void, onProgress: (at: Progress) => void) => void;
  readonly stop: () => void;
  /** Whether what came of one document holds for another. */
  readonly isSame: (a: Station, b: Station) => boolean;
  readonly store: StudyStore<T>;
}

/**
 * Studies the document while the study's list is in view. An edit ends it at once, so that the survey of the edit has
 * the machine; it begins anew when that survey is there. What undo brings back was studied already. Returns a function
 * that ends it.
 */
export function keepStudied<T>({ doing, begin, stop, isSame, store }: Work<T>): () => void {
  const outcomes = new Outcomes<T>(isSame);
  const calm = newClock();
  let busy: Station | null = null;
  let reached: Progress = { done: 0, of: 0 };
  let seen = documentStore.getState();

  function followDocument() {
    const now = documentStore.getState();
    const { history, opened } = now;
    if (opened !== seen.opened) {
      outcomes.forget();
      store.setState({ shown: { is: 'computing' } });
    }
    if (history.station !== seen.history.station) calm.stop();
    seen = now;
    next();
  }

  function next() {
    const { station } = seen.history;
    const { inView, stoppedFor } = store.getState();
    const isStopped = stoppedFor !== null && isSame(stoppedFor, station);
    if (busy && (isStopped || !isSame(busy, station))) end();
    const isWanted = inView && !isStopped && !busy && !outcomes.of(station);
    if (!isWanted) calm.stop();
    else if (isSurveyed(station)) calm.start(calmMs, () => ask(station));
    tell(busy ? { is: 'running', ...reached } : isStopped ? { is: 'stopped', ...reached } : restOr(isWanted));
  }

  function ask(station: Station) {
    busy = station;
    reached = { done: 0, of: 0 };
    begin(station, (reply) => finish(station, reply), advance);
    next();
  }

  function advance(progress: Progress) {
    reached = progress;
    next();
  }

  function finish(of: Station, reply: Reply<T>) {
    busy = null;
    if ('answer' in reply) outcomes.add({ of, value: reply.answer, at: Date.now() });
    else outcomes.add({ of, failure: failureOf(doing, of, reply.error) });
    next();
  }

  function end() {
    busy = null;
    stop();
  }

  function tell(phase: StudyPhase) {
    const { history } = seen;
    const { shown: before, phase: was } = store.getState();
    const shown = ageOf({
      own: outcomes.of(history.station),
      last: outcomes.last(),
      slow: true,
      before,
      history,
      isSame,
    });
    if (!shallow(shown, before)) store.setState({ shown });
    if (!shallow(phase, was)) store.setState({ phase });
  }

  const follows = [
    documentStore.subscribe(followDocument),
    resultsStore.subscribe(next),
    store.subscribe((now, before) => {
      if (now.inView !== before.inView || now.stoppedFor !== before.stoppedFor) next();
    }),
  ];
  next();
  return () => {
    for (const unfollow of follows) unfollow();
    calm.stop();
    end();
  };
}

const restOr = (isWanted: boolean): StudyPhase => ({ is: isWanted ? 'waiting' : 'resting' });

/** Whether the survey of a document is there, or came to nothing. */
function isSurveyed(station: Station): boolean {
  const results = resultsStore.getState();
  if (isUnderWay(results)) return false;
  return results.is === 'fresh' ? results.of === station : true;
}
