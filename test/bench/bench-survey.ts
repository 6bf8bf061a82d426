import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { edit } from '../../core/station/edit.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import { generateStation } from '../stations/generate.ts';
import { inMs, timed } from './timing.ts';

const roundsFor = (units: number): number => (units <= 60 ? 100 : units <= 200 ? 40 : 20);

/** The station after an edit, as a user makes one: another length for one cable. */
function edited(station: Station, round: number): Station {
  const cable = station.cables[round % station.cables.length];
  if (!cable) return station;
  return edit(station, { type: 'updateCable', id: cable.id, set: { lengthM: 1 + round / 100 } });
}

/** Heap in bytes that is held by what `make` gives, after the rubbish has gone. */
function bytesHeld(make: () => unknown): number {
  setFlagsFromString('--expose-gc');
  const collect: () => void = runInNewContext('gc');
  collect();
  const before = process.memoryUsage().heapUsed;
  const held = make();
  collect();
  return held === undefined ? 0 : process.memoryUsage().heapUsed - before;
}

/** The whole survey after an edit, for stations of several sizes, and how it grows with the number of cables. */
export function benchSurvey() {
  const medians: [number, number][] = [];
  for (const size of [20, 60, 200, 500]) {
    const station = generateStation(size);
    const make = (round: number) => edited(station, round);
    const surveyed = timed(roundsFor(size), make, survey);
    const bytes = bytesHeld(() => survey(make(1)));
    const what = `${String(station.units.length).padStart(4)} units ${String(station.cables.length).padStart(5)} cables`;
    console.log(`survey      ${what}  ${inMs(surveyed)}  holds ${(bytes / 1e6).toFixed(1).padStart(6)} MB`);
    console.log(`all reports ${what}  ${inMs(timed(Math.ceil(roundsFor(size) / 4), make, surveyReport))}`);
    medians.push([station.cables.length, surveyed.median]);
  }
  const [first, last] = [medians.at(0), medians.at(-1)];
  if (!first || !last) return;
  const exponent = Math.log(last[1] / first[1]) / Math.log(last[0] / first[0]);
  console.log(`growth of the survey from ${first[0]} to ${last[0]} cables: exponent ${exponent.toFixed(2)}`);
}
