import { judgeReading, type Station } from '../../../core/index.ts';
import { currentStation, documentStore } from '../../store/document.ts';
import type { PowerUpAnswer, PowerUpRequest, PowerUpWorker } from '../../worker/power-up-messages.ts';
import { powerUpStore } from './power-up-store.ts';
import { roundReadings, shownSince } from './round.ts';

/**
 * Keeps the sheet, and the causes of what is off, in step with the document while the stage is shown: one request at a
 * time, always for the newest. A reading does not change the sheet. Returns a function that ends it.
 */
export function runPowerUp(openWorker: () => PowerUpWorker): () => void {
  const { getState, setState } = powerUpStore;
  let worker: PowerUpWorker | null = null;
  /** The station of which the worker has the sheet; a new one has none. */
  let known: Station | null = null;
  let busy: { station: Station; explained: string | null } | null = null;

  function listen(): PowerUpWorker {
    const fresh = openWorker();
    fresh.onmessage = ({ data }) => finish(data);
    fresh.onerror = (event) => {
      event.preventDefault();
      fresh.terminate();
      worker = null;
      known = null;
      finish({ problem: event.message || 'the computation stopped' });
    };
    return fresh;
  }

  function finish(answer: PowerUpAnswer) {
    const asked = busy;
    busy = null;
    if (!asked) return;
    const { station, explained } = asked;
    if ('sheet' in answer) setState({ sheet: answer.sheet, station, causes: {}, explained: '', problem: null });
    else if ('causes' in answer) setState({ causes: answer.causes, explained: explained ?? '' });
    else
      setState({
        station,
        explained: explained ?? '',
        problem: `The sheet could not be worked out: ${answer.problem}.`,
      });
    next();
  }

  function next() {
    if (busy) return;
    const request = wanted(currentStation());
    const running = request !== null;
    if (running) {
      worker ??= listen();
      worker.postMessage(request);
    }
    if (getState().running !== running) setState({ running });
  }

  function wanted(station: Station): PowerUpRequest | null {
    const state = getState();
    const isOfSheet = state.station !== null && isSameButReadings(state.station, station);
    if (isOfSheet && !state.sheet) return null;
    const all = isOfSheet && state.sheet ? roundReadings(state.sheet, station, shownSince(station)) : [];
    const expected = new Map(state.sheet?.parts.flatMap((p) => p.steps).map((s) => [s.id, s.expected]));
    const off = all.filter(({ step, value }) => {
      const right = expected.get(step);
      return right && judgeReading(right, value) !== 'right';
    });
    const explained = off.length > 0 ? JSON.stringify(all) : '';
    if (isOfSheet && explained === state.explained) return null;
    // Causes are asked of a worker that knows the station.
    if (!isOfSheet || (off.length > 0 && !(known && isSameButReadings(known, station)))) {
      known = station;
      busy = { station, explained: null };
      return { wants: 'sheet', station };
    }
    if (off.length === 0) {
      setState({ causes: {}, explained: '' });
      return null;
    }
    busy = { station, explained };
    return { wants: 'causes', off, all };
  }

  const ends = [documentStore.subscribe(next), powerUpStore.subscribe((s, was) => s.round !== was.round && next())];
  next();
  return () => {
    for (const end of ends) end();
    worker?.terminate();
    busy = null;
    setState({ running: false });
  };
}

/** Documents share what did not change, so that this is quick. */
export const isSameButReadings = (a: Station, b: Station): boolean =>
  ([...new Set([...Object.keys(a), ...Object.keys(b)])] as (keyof Station)[]).every(
    (key) => key === 'readings' || a[key] === b[key],
  );
