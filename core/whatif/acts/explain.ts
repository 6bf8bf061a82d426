import { type Finding, severities } from '../../rules/finding.ts';
import { edit } from '../../station/edit.ts';
import { type Survey, survey } from '../../survey.ts';
import { actFinding } from './act-finding.ts';
import { type Cause, findCauses } from './find-causes.ts';
import { isHarm } from './harm.ts';

/**
 * A survey with what a hand did wrong as findings of its own, each before all that follows from it. The same where
 * nothing is wrong, or no single act is clearly behind it.
 */
export function explain(surveyed: Survey): Survey {
  const causes = findCauses(surveyed).filter((cause) => !isSaid(surveyed, cause));
  if (causes.length === 0) return surveyed;
  let { findings } = surveyed;
  for (const cause of causes) findings = foldUnder(findings, actFinding(surveyed.station, cause), cause.explains);
  return { ...surveyed, findings };
}

/** Whether a rule says it already, with its figures: all follows from one finding, which names the leads and has a fix as good. */
function isSaid(surveyed: Survey, { acts: [act, other], explains }: Cause): boolean {
  const [root, second] = explains.filter((f) => isHarm(f) && f.causedBy === undefined);
  if (!root?.fix || second || other) return false;
  const named = new Set(root.at.flatMap((place) => ('cable' in place ? [place.cable] : [])));
  if (act.cables.length === 0 || !act.cables.every((id) => named.has(id))) return false;
  const after = new Set(survey(edit(surveyed.station, root.fix.change), surveyed).findings.map((f) => f.id));
  return explains.every((f) => !isHarm(f) || !after.has(f.id));
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
