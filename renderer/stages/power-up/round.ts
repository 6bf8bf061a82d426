import { nowAndBefore, type PowerUpSheet, type Station, type StepReading, startOfRound } from '../../../core/index.ts';
import { documentStore } from '../../store/document.ts';
import { powerUpStore } from './power-up-store.ts';

/** When the round of readings that is shown began: by hand, or with the first reading of the latest ones. */
export function shownSince(station: Station): string {
  const { round } = powerUpStore.getState();
  return round && round.opened === documentStore.getState().opened ? round.since : startOfRound(station);
}

/** What now stands in the boxes of a sheet. */
export function roundReadings({ parts }: PowerUpSheet, station: Station, since: string): StepReading[] {
  return parts
    .flatMap((part) => part.steps)
    .flatMap((step) => {
      const { now } = nowAndBefore(station, step.id, since);
      return now && step.expected ? [{ step: step.id, value: now.value }] : [];
    });
}

const hourMs = 3600 * 1000;

/**
 * Since when a reading that is written down now counts: what is shown goes on unless it is half a day old; then a new
 * round begins, so that last year's readings are not written over.
 */
export function sinceForWriting(station: Station, now: Date): string {
  const since = shownSince(station);
  const newest = station.readings
    .map((r) => r.when)
    .sort()
    .at(-1);
  const last = [since, newest ?? ''].sort().at(-1) ?? '';
  if (last !== '' && now.getTime() - Date.parse(last) < 12 * hourMs) return since;
  return beginRound(now);
}

/** Empties the boxes for another round; what was read stays as the last time's. */
export function beginRound(now: Date): string {
  const since = now.toISOString();
  powerUpStore.setState({ round: { since, opened: documentStore.getState().opened } });
  return since;
}
