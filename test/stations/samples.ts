import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { surveyReport } from '../../core/reports/survey-report.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { studyFailures } from '../../core/whatif/study-failures.ts';

const folder = path.join(import.meta.dirname, '../../core/samples');
const ending = '.station.json';

/** The samples that ship with the app, by name. */
export const sampleNames = readdirSync(folder).flatMap((file) =>
  file.endsWith(ending) ? [file.slice(0, -ending.length)] : [],
);

/** The text of a sample as it ships. */
export const sampleText = (name: string): string => readFileSync(path.join(folder, `${name}${ending}`), 'utf8');

// Documents never change, and nor does what is worked out for them: many tests look at the same ones.
function once<T>(make: (name: string) => T): (name: string) => T {
  const made = new Map<string, T>();
  return (name) => {
    if (!made.has(name)) made.set(name, make(name));
    return made.get(name) as T;
  };
}

/** A sample that ships with the app. */
export const sample = once((name): Station => {
  const read = readStation(sampleText(name));
  if ('problems' in read) throw new Error(read.problems.map((p) => `${p.place}: ${p.message}`).join('\n'));
  return read.station;
});

/** Its survey, as screens and sheets show it. */
export const sampleReport = once((name) => surveyReport(sample(name)));

/** What each single failure would lead to in it. */
export const sampleFailures = once((name) => studyFailures(sample(name)));
