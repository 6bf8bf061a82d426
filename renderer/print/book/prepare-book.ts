import type { Station } from '../../../core/index.ts';
import { type Computed, isUnderWay } from '../../store/computed.ts';
import { currentStation, documentStore } from '../../store/document.ts';
import { resultsStore } from '../../store/results.ts';
import { type MixUpResult, mixUpStore } from '../../store/studies.ts';
import { mixUpsAside } from '../../worker/mix-ups-aside.ts';
import { powerUpAside } from '../../worker/power-up-aside.ts';
import type { BookRequest, PreparedBook } from './book-store.ts';

/** Working the sheet out takes longer with the square of the units: beyond this nobody would wait for a book. */
export const mostUnits = 100;

/** The same of what a hand could do wrong: each of some hundred tries is a survey. */
export const mostUnitsTried = 30;

export interface Preparing {
  /** Makes it ready with what is there now. What is old then says so on paper. */
  readonly hurry: () => void;
  readonly cancel: () => void;
}

/** Calls once all that a book rests on is computed, or has failed: a book is of the drawing as it is, or says that it is not. */
export function prepareBook(request: BookRequest, onReady: (book: PreparedBook) => void): Preparing {
  const units = currentStation().units.length;
  const has = (part: BookRequest['parts'][number], most: number) => request.parts.includes(part) && units <= most;
  const powerUp = has('power-up', mostUnits) ? workedOut(powerUpAside, look) : null;
  const isTried = request.parts.includes('mix-ups') && knownMixUps() !== null;
  const mixUps = isTried || has('mix-ups', mostUnitsTried) ? workedOut(tryMixUps, look) : null;
  const asides = [powerUp, mixUps].flatMap((aside) => aside ?? []);
  let hurried = false;

  function look() {
    for (const aside of asides) aside.follow(currentStation());
    const results = resultsStore.getState();
    const isReady = hurried
      ? results.is !== 'passing'
      : !isUnderWay(results) && asides.every((aside) => aside.isThere());
    if (!isReady) return;
    end();
    onReady({ ...request, powerUp: powerUp?.now() ?? null, mixUps: mixUps?.now() ?? null });
  }

  const ends = [resultsStore.subscribe(look), documentStore.subscribe(look)];
  const end = () => {
    for (const one of ends) one();
    for (const aside of asides) aside.end();
  };
  // Nobody has what to cancel yet.
  queueMicrotask(look);
  return {
    hurry() {
      hurried = true;
      look();
    },
    cancel: end,
  };
}

type Begin<T> = (station: Station, onDone: (value: Computed<T>) => void) => () => void;

/** Something that is worked out in a thread of its own, anew for each document. */
function workedOut<T>(begin: Begin<T>, onDone: () => void) {
  let value: Computed<T> = { is: 'computing' };
  let asked: { readonly of: Station; readonly end: () => void } | null = null;
  return {
    now: () => value,
    isThere: () => !isUnderWay(value),
    follow(station: Station) {
      if (asked?.of === station) return;
      asked?.end();
      value = { is: 'computing' };
      const end = begin(station, (answer) => {
        value = answer;
        onDone();
      });
      asked = { of: station, end };
    },
    end: () => asked?.end(),
  };
}

/** What the list on screen came to, where it is of the document as it is. */
function knownMixUps() {
  const { shown } = mixUpStore.getState();
  return shown.is === 'fresh' && shown.of === currentStation() ? shown : null;
}

/** What is on screen already is not tried again. */
const tryMixUps: Begin<MixUpResult> = (station, onDone) => {
  const known = knownMixUps();
  if (!known || known.of !== station) return mixUpsAside(station, onDone);
  let gone = false;
  queueMicrotask(() => gone || onDone(known));
  return () => {
    gone = true;
  };
};
