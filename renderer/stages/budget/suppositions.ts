import {
  type Finding,
  formatPercent,
  formatVolts,
  type Supposed,
  type SurveyReport,
  type Variable,
} from '../../../core/index.ts';

/** Supplies, batteries and transmitters that do something in a hook-up. */
export function variablesIn(variables: readonly Variable[], { budget, rf }: SurveyReport, hookup: string): Variable[] {
  const gives = new Set(
    budget.supplies
      .filter((s) => s.hookup === hookup && (s.receiveAmps > 1e-6 || s.sendingAmps > 1e-6))
      .map((s) => `${s.unit}.${s.element}`),
  );
  const sends = new Set(
    rf
      .filter((r) => r.hookup === hookup)
      .flatMap(({ staircase: [first] }) => (first?.at && 'unit' in first.at ? [first.at.unit] : [])),
  );
  return variables.filter(({ key, unit, figure }) => (figure === 'watts' ? sends.has(unit) : gives.has(key)));
}

/** A figure as it stands in its field. */
export function variableText({ figure }: Pick<Variable, 'figure'>, value: number): string {
  if (figure === 'volts') return formatVolts(value);
  if (figure === 'charge') return formatPercent(value);
  return `${Number(value.toPrecision(3))} W`;
}

/** `Bench supply 12.00 V in place of 13.80 V; 50 % of the time sending in place of 33 %`; empty while all is as drawn. */
export function suppositionWords(variables: readonly Variable[], supposed: Supposed, sendShare: number): string {
  const parts = variables.flatMap((variable) => {
    const wanted = supposed[variable.figure]?.[variable.key];
    if (wanted === undefined || wanted === variable.value) return [];
    return [`${variable.name} ${variableText(variable, wanted)} in place of ${variableText(variable, variable.value)}`];
  });
  const wanted = supposed.sendShare ?? sendShare;
  if (wanted !== sendShare)
    parts.push(`${formatPercent(wanted)} of the time sending in place of ${formatPercent(sendShare)}`);
  return parts.join('; ');
}

const mostTold = 3;

/** What the other figures do to the findings that stand for themselves, in sentences. */
export function findingWords(before: readonly Finding[], after: readonly Finding[]): string {
  const [was, is] = [new Set(before.map((f) => f.id)), new Set(after.map((f) => f.id))];
  // Notes tell of the drawing more than of its figures.
  const counts = (f: Finding) => f.severity !== 'note' && f.causedBy === undefined;
  const fresh = after.filter((f) => !was.has(f.id) && counts(f));
  const gone = before.filter((f) => !is.has(f.id) && counts(f));
  if (fresh.length === 0 && gone.length === 0) return 'The findings stay the same.';
  const shows = fresh.slice(0, mostTold).map((f) => `Then a ${f.severity} shows: ${f.message}`);
  if (fresh.length > mostTold) shows.push(`And ${fresh.length - mostTold} more.`);
  const goes = gone.map((f) => `“${f.title}” goes.`);
  return [...shows, ...goes].join(' ');
}
