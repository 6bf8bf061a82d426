import { readFileSync } from 'node:fs';
import path from 'node:path';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { type Survey, survey } from '../../core/survey.ts';
import { bytesHeld } from '../bytes-held.ts';
import { generateStation } from '../stations/generate.ts';
import { editedStations } from './edits.ts';
import { inMs, medianOf, timed, timeOf } from './timing.ts';

interface Figures {
  readonly cables: number;
  /** Milliseconds of a survey from scratch, and of one after an edit; medians. */
  readonly scratch: number;
  readonly edit: number;
}

/** Of a large station's edits some say what all do. */
const everyFor = (units: number): number => (units >= 500 ? 7 : units >= 200 ? 4 : 1);

/** Surveys from scratch and after edits, for stations of several sizes, and how both grow with the number of cables. */
export function benchSurvey() {
  benchStation('club-hall', clubHall(), 2);
  const sizes = [60, 200, 500].map((size) => benchStation(`${size}`, generateStation(size), everyFor(size)));
  const [first, last] = [sizes.at(0), sizes.at(-1)];
  if (!first || !last) return;
  const exponent = (what: 'scratch' | 'edit') =>
    Math.log(last[what] / first[what]) / Math.log(last.cables / first.cables);
  console.log(`\ngrowth from ${first.cables} to ${last.cables} cables, as a power of their number`);
  figure('survey-scratch-exponent', exponent('scratch'));
  figure('survey-edit-exponent', exponent('edit'));
}

/** With edits of every cable and unit in turn, or of every so many. */
function benchStation(name: string, station: Station, every: number): Figures {
  const { units, cables } = station;
  console.log(`\n${name}: ${units.length} units, ${cables.length} cables, one edit in ${every}`);
  const edits = [...editedStations(station, every)].filter(({ stations }) => stations.length > 0);
  const some = edits.flatMap(({ stations }) => stations);
  const oneOf = (round: number) => some[(round * 7) % some.length] ?? station;
  const scratch = timed(units.length < 100 ? 20 : 8, oneOf, (next) => survey(next));
  console.log(`survey from scratch   ${inMs(scratch)}`);
  console.log(`all reports           ${inMs(timed(4, oneOf, surveyReport))}`);
  const before = survey(station);
  const measured = edits.map(({ kind, stations }) => {
    const times = stations.map((next) => timeOf(() => survey(next, before)));
    return { kind, times };
  });
  const edit = medianOf(measured.flatMap(({ times }) => times));
  figure(`survey-scratch-${name}`, scratch.median, 'ms');
  figure(`survey-edit-${name}`, edit, 'ms');
  figure(`survey-edit-to-scratch-${name}`, edit / scratch.median);
  for (const { kind, times } of measured) figure(`survey-${kind}-${name}`, medianOf(times), 'ms');
  const moved = measured.find(({ kind }) => kind === 'plug-moved')?.times ?? [];
  figure(`survey-plug-moved-mean-${name}`, moved.reduce((sum, ms) => sum + ms, 0) / moved.length, 'ms');
  // Copies: what is worked out for a document is held by it.
  figure(`survey-held-${name}`, bytesHeld(() => survey(structuredClone(station))) / 1e6, 'MB');
  figure(`survey-held-after-edit-${name}`, bytesHeld(() => afterEdit(structuredClone(station))) / 1e6, 'MB');
  return { cables: cables.length, scratch: scratch.median, edit };
}

function afterEdit(station: Station): Survey {
  const [edited = station] = [...editedStations(station, station.cables.length)].flatMap(({ stations }) => stations);
  return survey(edited, survey(station));
}

/** A line that a program can read as well. */
const figure = (name: string, value: number, unit = '') =>
  console.log(`figure ${name} ${value.toPrecision(4)} ${unit}`.trimEnd());

/** The sample with units of the most kinds. */
function clubHall(): Station {
  const read = readStation(readFileSync(path.resolve('core/samples/club-hall.station.json'), 'utf8'));
  if ('problems' in read) throw new Error('the sample “club-hall” can not be read');
  return read.station;
}
