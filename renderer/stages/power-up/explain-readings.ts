import { judgeReading, type PowerUpSheet, type Station, type StepReading } from '../../../core/index.ts';
import { ofAnyAge } from '../../store/computed.ts';
import { currentStation, documentStore } from '../../store/document.ts';
import { newClock } from '../../worker/clock.ts';
import { failureOf } from '../../worker/failure-of.ts';
import { sheetLimitMs } from '../../worker/limits.ts';
import { newPatience } from '../../worker/patience.ts';
import type { PowerUpAnswer, PowerUpThread } from '../../worker/power-up-messages.ts';
import { type Reply, watchThread } from '../../worker/watched-thread.ts';
import { noCauses, powerUpStore } from './power-up-store.ts';
import { roundReadings, shownSince } from './round.ts';

interface Asked {
  /** The sheet that the readings were taken by. */
  readonly sheet: PowerUpSheet;
  readonly explains: string;
  readonly since: number;
}

/**
 * Looks for what would cause the readings that are off, for the newest ones, once their sheet is there. Returns a
 * function that ends it.
 */
export function explainReadings(open: () => PowerUpThread): () => void {
  const { getState, setState } = powerUpStore;
  const thread = watchThread(open);
  const patience = newPatience();
  const endClock = newClock();
  let busy: Asked | null = null;

  function look() {
    const { sheet, explained } = getState();
    if (sheet.is !== 'fresh') return;
    const station = currentStation();
    const all = roundReadings(sheet.value, station, shownSince(station));
    const off = offOf(sheet.value, all);
    const explains = off.length > 0 ? JSON.stringify(all) : '';
    if (explains === explained) return;
    if (busy) {
      if (busy.explains === explains && busy.sheet === sheet.value) return;
      endClock.start(busy.since + patience.ms() - Date.now(), endUnwanted);
    } else if (off.length === 0) setState(noCauses);
    else {
      busy = { sheet: sheet.value, explains, since: Date.now() };
      ask(station, off, all);
    }
  }

  function ask(station: Station, off: readonly StepReading[], all: readonly StepReading[]) {
    setState({ looking: true });
    thread.ask({ wants: 'causes', station, off, all }, sheetLimitMs(station), (reply) => finish(station, reply));
  }

  function finish(station: Station, reply: Reply<PowerUpAnswer>) {
    const asked = busy;
    rest();
    if (!asked) return;
    // What was said of another sheet's readings is nothing to say of this one's.
    if (ofAnyAge(getState().sheet) !== asked.sheet) setState({ looking: false });
    else if ('error' in reply) {
      const causesFailure = failureOf('looking for what would cause the readings', station, reply.error);
      setState({ ...noCauses, explained: asked.explains, causesFailure });
    } else if ('causes' in reply.answer) {
      patience.finished(Date.now() - asked.since);
      setState({ ...noCauses, explained: asked.explains, causes: reply.answer.causes });
    }
    look();
  }

  function endUnwanted() {
    thread.end();
    rest();
    patience.ended();
    setState({ looking: false });
    look();
  }

  function rest() {
    busy = null;
    endClock.stop();
  }

  const ends = [
    documentStore.subscribe(look),
    powerUpStore.subscribe((s, was) => (s.sheet !== was.sheet || s.round !== was.round) && look()),
  ];
  look();
  return () => {
    for (const end of ends) end();
    rest();
    thread.end();
    setState({ looking: false });
  };
}

function offOf({ parts }: PowerUpSheet, all: readonly StepReading[]): StepReading[] {
  const expected = new Map(parts.flatMap((p) => p.steps).map((s) => [s.id, s.expected]));
  return all.filter(({ step, value }) => {
    const right = expected.get(step);
    return right && judgeReading(right, value) !== 'right';
  });
}
