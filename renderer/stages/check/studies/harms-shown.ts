import { type Finding, type Severity, severities } from '../../../../core/index.ts';

type Harms = readonly [Finding, ...Finding[]];

/** What is worth a line: no advice, and nothing that follows from another of them, unless there is nothing else. */
export function harmsShown(harms: Harms): Harms {
  const [worst, ...others] = harms.filter((f) => f.severity !== 'note' && f.causedBy === undefined);
  return worst ? [worst, ...others] : harms;
}

/** How many rows there are of each severity. */
export const countSeverities = (rows: readonly { readonly severity: Severity }[]): Record<Severity, number> =>
  Object.fromEntries(severities.map((s) => [s, rows.filter((r) => r.severity === s).length])) as Record<
    Severity,
    number
  >;
