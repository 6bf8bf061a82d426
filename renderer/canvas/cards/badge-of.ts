import {
  type Finding,
  isFoundIn,
  isOpenCause,
  type Severity,
  type SurveyReport,
  severities,
} from '../../../core/index.ts';

export interface Badge {
  readonly severity: Severity;
  readonly count: number;
}

const indexes = new WeakMap<SurveyReport, Map<string, Map<string, Badge>>>();

/** The badge of a unit or cable in a hook-up: its open causes, by the worst of them. */
export function badgeOf(report: SurveyReport | null, hookup: string, id: string): Badge | undefined {
  if (!report) return undefined;
  const known = indexes.get(report) ?? new Map<string, Map<string, Badge>>();
  indexes.set(report, known);
  const badges =
    known.get(hookup) ?? countByPlace(report.findings.filter((f) => isOpenCause(f) && isFoundIn(f, hookup)));
  known.set(hookup, badges);
  return badges.get(id);
}

function countByPlace(findings: readonly Finding[]): Map<string, Badge> {
  const badges = new Map<string, Badge>();
  for (const { at, severity } of findings) {
    for (const id of new Set(at.map((p) => ('unit' in p ? p.unit : p.cable)))) {
      const badge = badges.get(id);
      const worse =
        badge && severities.indexOf(badge.severity) < severities.indexOf(severity) ? badge.severity : severity;
      badges.set(id, { severity: worse, count: (badge?.count ?? 0) + 1 });
    }
  }
  return badges;
}
