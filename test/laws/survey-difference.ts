import { budgetOf } from '../../core/reports/budget/budget-of.ts';
import { overlaysOf } from '../../core/reports/overlays-of.ts';
import { reportAudio } from '../../core/reports/report-audio.ts';
import { reportKeydowns } from '../../core/reports/report-keydowns.ts';
import { reportRf } from '../../core/reports/rf/report-rf.ts';
import type { Survey } from '../../core/survey.ts';

/** The first thing in which two surveys of a station differ, in their findings and in all reports; null where they are the same. */
export function surveyDifference(one: Survey, other: Survey): string | null {
  return findingsDifference(one, other) ?? difference(reportsOf(one), reportsOf(other), 'reports');
}

/** The same in their findings alone. */
export function findingsDifference({ findings: one }: Survey, { findings: other }: Survey): string | null {
  const [ids, others] = [one, other].map((list) => list.map(({ id }) => id)) as [string[], string[]];
  const extra = ids.filter((id) => !others.includes(id));
  const missing = others.filter((id) => !ids.includes(id));
  if (extra.length + missing.length > 0) return `said too much: [${extra}]; not said: [${missing}]`;
  return one.reduce<string | null>(
    (found, finding, i) => found ?? difference(finding, other[i], finding.id),
    difference(ids, others, 'order of findings'),
  );
}

const reportsOf = (survey: Survey) => ({
  budget: budgetOf(survey),
  keydowns: reportKeydowns(survey),
  rf: reportRf(survey),
  audio: reportAudio(survey),
  overlays: overlaysOf(survey),
});

/** Where two values first differ, and how; numbers that rounding can account for do not. */
function difference(one: unknown, other: unknown, at: string): string | null {
  if (Object.is(one, other)) return null;
  if (typeof one === 'number' && typeof other === 'number') return isNear(one, other) ? null : told(one, other, at);
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return told(one, other, at);
  const [a, b] = [one, other] as Record<string, unknown>[];
  const keys = new Set([...Object.keys(a ?? {}), ...Object.keys(b ?? {})]);
  for (const key of keys) {
    const found = difference(a?.[key], b?.[key], `${at} › ${key}`);
    if (found) return found;
  }
  return null;
}

const isNear = (a: number, b: number): boolean =>
  a === b || Math.abs(a - b) <= Math.max(1e-12, 1e-9 * Math.max(Math.abs(a), Math.abs(b)));

const told = (one: unknown, other: unknown, at: string): string =>
  `${at}: ${JSON.stringify(one)} where one from scratch says ${JSON.stringify(other)}`;
