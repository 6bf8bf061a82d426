import { type Finding, severities } from '../../rules/finding.ts';
import type { Survey } from '../../survey.ts';
import { actFinding } from './act-finding.ts';
import { findCauses } from './find-causes.ts';

/**
 * A survey with what a hand did wrong as findings of its own, each before all that follows from it. The same where
 * nothing is wrong, or no single act is clearly behind it.
 */
export function explain(surveyed: Survey): Survey {
  const causes = findCauses(surveyed);
  if (causes.length === 0) return surveyed;
  let { findings } = surveyed;
  for (const cause of causes) findings = foldUnder(findings, actFinding(surveyed.station, cause), cause.explains);
  return { ...surveyed, findings };
}

/** Findings with one more, from which some of them follow; what followed from those and stays stands for itself. */
function foldUnder(findings: readonly Finding[], root: Finding, explained: readonly Finding[]): Finding[] {
  const ids = new Set(explained.filter((f) => f.accepted === undefined).map((f) => f.id));
  const follow = findings.filter((f) => ids.has(f.id)).map((f): Finding => ({ ...f, causedBy: root.id }));
  const rest = findings.filter((f) => !ids.has(f.id)).map((f) => standAlone(f, ids));
  const roots = [root, ...rest.filter((f) => f.causedBy === undefined)].sort(
    (a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity),
  );
  const all = [...follow, ...rest];
  return roots.flatMap((one) => [one, ...all.filter((f) => f.causedBy === one.id)]);
}

function standAlone(finding: Finding, explained: ReadonlySet<string>): Finding {
  if (finding.causedBy === undefined || !explained.has(finding.causedBy)) return finding;
  const { causedBy: _, ...own } = finding;
  return own;
}
