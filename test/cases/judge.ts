import { type Finding, severities } from '../../core/rules/finding.ts';
import { edit } from '../../core/station/edit.ts';
import { remember } from '../../core/station/remember.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import { studyFailures } from '../../core/whatif/study-failures.ts';
import type { Correct, Trouble, Wanted } from './case.ts';

/** Worked out once: a station is judged in several ways. */
const findingsOf = remember((station: Station) => survey(station).findings);
const failuresOf = remember((station: Station) => studyFailures(station));

/** What a case misses: sentences, none where all is as it should be. */
export function missedBy({ wrong, finds, whenFails }: Trouble): string[] {
  const findings = whenFails === undefined ? findingsOf(wrong) : failing(wrong, whenFails);
  const told = findings.map((f) => `${f.severity} ${f.id}: ${f.message}`).join(' / ') || 'nothing';
  return finds.flatMap((wanted) => {
    const why = mismatch(findings, wanted);
    return why === null ? [] : [`${wanted.rule}: ${why}; found: ${told}`];
  });
}

/** Whatever the tool says above a note of a station that is right. */
export const alarmsOf = (station: Station): string[] =>
  findingsOf(station)
    .filter((f) => severities.indexOf(f.severity) < severities.indexOf('note'))
    .map((f) => `${f.severity} ${f.id}: ${f.message}`);

/** The same for the put-right half of a case: its failure, where one is named, may do no harm either. */
export const alarmsOfRight = ({ right, whenFails }: Trouble): string[] => [
  ...alarmsOf(right),
  ...(whenFails === undefined
    ? []
    : failing(right, whenFails)
        .filter((f) => f.severity === 'danger')
        .map((f) => `${f.severity} ${f.id}: ${f.message}`)),
];

export const alarmsOfCorrect = ({ station }: Correct): string[] => alarmsOf(station);

/** Whether the tool offers to put something right by itself. */
export const hasFix = ({ wrong }: Trouble): boolean => findingsOf(wrong).some((f) => f.fix);

/** The fixes of a case that leave their finding or bring another one, in sentences. */
export function fixesThatFail({ wrong }: Trouble): string[] {
  const before = findingsOf(wrong);
  // The same rule at the same place may say something milder.
  const nameOf = (f: Finding) => `${f.rule}@${f.id.split('@')[1]}`;
  const known = new Set(before.map(nameOf));
  return before.flatMap(({ id, fix }) => {
    if (!fix) return [];
    const after = survey(edit(wrong, fix.change)).findings.filter((f) => f.severity !== 'note');
    return [
      ...(after.some((f) => f.id === id) ? [`${fix.name} leaves ${id}`] : []),
      ...after.filter((f) => !known.has(nameOf(f))).map((f) => `${fix.name} brings ${f.id}: ${f.message}`),
    ];
  });
}

function failing(station: Station, id: string): readonly Finding[] {
  const studies = failuresOf(station);
  const study = studies.find(({ failure }) => failure.id === id);
  if (!study) throw new Error(`nothing called ${id} can fail: ${studies.map((s) => s.failure.id).join(', ')}`);
  return study.findings;
}

function mismatch(
  findings: readonly Finding[],
  { rule, at, values = {}, within = 0.05, severity }: Wanted,
): string | null {
  const same = findings.filter((f) => f.rule === rule);
  if (same.length === 0) return 'not found';
  const here = same.find((f) => JSON.stringify(pick(f.at[0], at)) === JSON.stringify(at));
  if (!here) return `found elsewhere: ${JSON.stringify(same.map((f) => f.at[0]))}`;
  if (severity !== undefined && here.severity !== severity) return `is a ${here.severity}`;
  for (const [name, wanted] of Object.entries(values)) {
    const value = here.values[name];
    const isIt =
      typeof wanted === 'string' ? value === wanted : Math.abs(Number(value) - wanted) <= within * Math.abs(wanted);
    if (!isIt) return `${name} is ${value}, not ${wanted}`;
  }
  return null;
}

/** Of a place the fields that are asked for, in their order. */
function pick(place: unknown, asked: object): object {
  const all = (place ?? {}) as Record<string, unknown>;
  return Object.fromEntries(Object.keys(asked).map((key) => [key, all[key]]));
}
