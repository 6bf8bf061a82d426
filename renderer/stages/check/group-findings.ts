import type { Finding, Severity } from '../../../core/index.ts';

/** A cause with all that follows from it, in the report's order. */
export interface FindingGroup {
  readonly finding: Finding;
  readonly consequences: readonly Finding[];
}

export interface GroupedFindings {
  readonly open: readonly FindingGroup[];
  readonly accepted: readonly Finding[];
  /** Open causes; what is folded under them is not counted again. */
  readonly counts: Readonly<Record<Severity, number>>;
}

/** Open findings with their consequences folded under them, and the accepted ones apart. */
export function groupFindings(findings: readonly Finding[]): GroupedFindings {
  const byId = new Map(findings.map((f) => [f.id, f]));
  const openOnes = findings.filter((f) => f.accepted === undefined);
  const rootOf = (finding: Finding): Finding => {
    let root = finding;
    // A chain of causes ends; the limit guards against a report that goes in circles.
    for (let i = 0; i < 20 && root.causedBy !== undefined; i++) {
      const cause = byId.get(root.causedBy);
      if (!cause || cause.accepted !== undefined) break;
      root = cause;
    }
    return root;
  };
  const followers = new Map<string, Finding[]>();
  for (const finding of openOnes) {
    const root = rootOf(finding);
    if (root !== finding) followers.set(root.id, [...(followers.get(root.id) ?? []), finding]);
  }
  const folded = new Set([...followers.values()].flat().map((f) => f.id));
  const counts = { danger: 0, fault: 0, doubt: 0, note: 0 };
  const causes = openOnes.filter((f) => !folded.has(f.id));
  for (const { severity } of causes) counts[severity]++;
  return {
    open: causes.map((finding) => ({ finding, consequences: followers.get(finding.id) ?? [] })),
    accepted: findings.filter((f) => f.accepted !== undefined),
    counts,
  };
}
