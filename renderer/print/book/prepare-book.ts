import type { PowerUpSheet, Station } from '../../../core/index.ts';
import { type Computed, isUnderWay } from '../../store/computed.ts';
import { currentStation, documentStore } from '../../store/document.ts';
import { resultsStore } from '../../store/results.ts';
import { powerUpAside } from '../../worker/power-up-aside.ts';
import type { BookRequest, PreparedBook } from './book-store.ts';

/** Working the sheet out takes longer with the square of the units: beyond this nobody would wait for a book. */
export const mostUnits = 100;

export interface Preparing {
  /** Makes it ready with what is there now. What is old then says so on paper. */
  readonly hurry: () => void;
  readonly cancel: () => void;
}

/** Calls once all that a book rests on is computed, or has failed: a book is of the drawing as it is, or says that it is not. */
export function prepareBook(request: BookRequest, onReady: (book: PreparedBook) => void): Preparing {
  const wantsSheet = request.parts.includes('power-up') && currentStation().units.length <= mostUnits;
  let powerUp: Computed<PowerUpSheet> = { is: 'computing' };
  let asked: { readonly of: Station; readonly end: () => void } | null = null;
  let hurried = false;

  function look() {
    const station = currentStation();
    if (wantsSheet && asked?.of !== station) askFor(station);
    const results = resultsStore.getState();
    const isReady = hurried ? results.is !== 'passing' : !isUnderWay(results) && !(wantsSheet && isUnderWay(powerUp));
    if (!isReady) return;
    end();
    onReady({ ...request, powerUp: wantsSheet ? powerUp : null });
  }

  function askFor(station: Station) {
    asked?.end();
    powerUp = { is: 'computing' };
    const stop = powerUpAside(station, (answer) => {
      powerUp = answer;
      look();
    });
    asked = { of: station, end: stop };
  }

  const ends = [resultsStore.subscribe(look), documentStore.subscribe(look)];
  const end = () => {
    for (const one of ends) one();
    asked?.end();
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
