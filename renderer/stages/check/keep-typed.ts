import type { TypedReason } from './findings-view.ts';
import type { FindingGroup } from './group-findings.ts';

/** An entry of the list; gone where the newest report no longer has it. */
export interface ListedCause extends FindingGroup {
  readonly gone: boolean;
}

/**
 * The findings shown with those still among them for which a reason is being typed, though the newest report (`found`)
 * no longer has them: each after the one that it stood behind `before`, so that the field stays where it is.
 */
export function keepTyped(
  open: readonly FindingGroup[],
  typed: Readonly<Record<string, TypedReason>>,
  before: readonly string[],
  found: ReadonlySet<string>,
): ListedCause[] {
  const list = open.map((cause): ListedCause => ({ ...cause, gone: false }));
  for (const { finding } of Object.values(typed)) {
    if (found.has(finding.id)) continue;
    const ahead = before.slice(0, Math.max(0, before.indexOf(finding.id))).reverse();
    const neighbour = ahead.find((id) => list.some((c) => c.finding.id === id));
    const at = list.findIndex((c) => c.finding.id === neighbour) + 1;
    list.splice(at, 0, { finding, consequences: [], gone: true });
  }
  return list;
}
