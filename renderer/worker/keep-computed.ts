import { shallow } from 'zustand/shallow';
import type { Station } from '../../core/index.ts';
import { ageOf, type Computed, type Good } from '../store/computed.ts';
import { documentStore } from '../store/document.ts';
import { newClock } from './clock.ts';
import { failureOf } from './failure-of.ts';
import { type Outcome, Outcomes } from './outcomes.ts';
import { newPatience } from './patience.ts';
import type { Reply } from './watched-thread.ts';

/** For so long what is known of the document before stands in for the next without a word. */
export const quietMs = 1000;

interface Work<T> {
  /** What it is, to follow “while”. */
  readonly doing: string;
  /** Begins to compute; a reply comes once, unless it is stopped before. */
  readonly begin: (station: Station, onReply: (reply: Reply<T>) => void) => void;
  readonly stop: () => void;
  /** Begins to work out more about what was computed, where that takes longer; returns a function that ends it. */
  readonly improve?: (good: Good<T>, onBetter: (value: T) => void) => () => void;
  /** Whether what came of one document holds for another. */
  readonly isSame: (a: Station, b: Station) => boolean;
  readonly shown: () => Computed<T>;
  readonly show: (computed: Computed<T>) => void;
}

/**
 * Keeps something computed in step with the document, always for the newest: edits meanwhile replace each other as the
 * one that is next, so nothing queues up. What nobody waits for any more is stopped when it takes long; what undo
 * brings back was computed already. Returns a function that ends it.
 */
export function keepComputed<T>({ doing, begin, stop, improve, isSame, shown, show }: Work<T>): () => void {
  const patience = newPatience();
  const outcomes = new Outcomes<T>(isSame);
  const slowClock = newClock();
  const endClock = newClock();
  let busy: { readonly station: Station; readonly since: number } | null = null;
  let opened = documentStore.getState().opened;
  let slow = false;
  let better: { readonly of: Good<T>; readonly stop: () => void } | null = null;
  const whole = new WeakSet<object>();

  function next() {
    const { history, opened: now } = documentStore.getState();
    const { station } = history;
    // What is known of another document is nothing to show of this one, not even as old.
    if (now !== opened) {
      outcomes.forget();
      show({ is: 'computing' });
    }
    opened = now;
    const own = outcomes.of(station);
    if (own) waitNoMore();
    else {
      slowClock.start(quietMs, () => {
        slow = true;
        tell();
      });
      if (!busy) ask(station);
    }
    if (busy && !isSame(busy.station, station)) endClock.start(busy.since + patience.ms() - Date.now(), endUnwanted);
    tell();
    // After it is shown: what goes wrong here keeps nobody from what is there.
    lookFurther(own);
  }

  function ask(station: Station) {
    busy = { station, since: Date.now() };
    begin(station, (reply) => finish(station, reply));
  }

  function finish(of: Station, reply: Reply<T>) {
    const since = busy?.since ?? Date.now();
    rest();
    if ('answer' in reply) {
      patience.finished(Date.now() - since);
      waitNoMore();
      outcomes.add({ of, value: reply.answer, at: Date.now() });
    } else outcomes.add({ of, failure: failureOf(doing, of, reply.error) });
    next();
  }

  /** Only for the document as it is; what is known of it so far is shown meanwhile. */
  function lookFurther(own: Outcome<T> | undefined) {
    if (better && better.of === own) return;
    better?.stop();
    better = null;
    if (!improve || !own || !('value' in own) || whole.has(own)) return;
    better = {
      of: own,
      stop: improve(own, (value) => {
        better = null;
        const good = { ...own, value };
        whole.add(good);
        outcomes.add(good);
        tell();
      }),
    };
  }

  function endUnwanted() {
    if (!busy || isSame(busy.station, documentStore.getState().history.station)) return;
    stop();
    rest();
    patience.ended();
    next();
  }

  function rest() {
    busy = null;
    endClock.stop();
  }

  function waitNoMore() {
    slow = false;
    slowClock.stop();
  }

  function tell() {
    const { history } = documentStore.getState();
    const before = shown();
    const own = outcomes.of(history.station);
    const computed = ageOf({ own, last: outcomes.last(), slow, before, history, isSame });
    if (!shallow(computed, before)) show(computed);
  }

  seed(shown());
  const endFollowing = documentStore.subscribe(next);
  next();
  return () => {
    endFollowing();
    waitNoMore();
    rest();
    stop();
    better?.stop();
  };

  /** What is shown already needn't be computed again. */
  function seed(computed: Computed<T>) {
    if ('value' in computed) outcomes.add({ of: computed.of, value: computed.value, at: computed.at });
    if ('failure' in computed && computed.failure)
      outcomes.add({ of: computed.failure.station, failure: computed.failure });
  }
}
