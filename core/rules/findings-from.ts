import type { Place } from '../station/place.ts';
import type { Station } from '../station/schema/schema.ts';
import { momentNames } from '../trial/instants.ts';
import { figuresOf } from './accept.ts';
import { fillMessage } from './fill-message.ts';
import { type Finding, severities, worstOf } from './finding.ts';
import type { Facts, Report, Rule } from './rule.ts';
import type { Said } from './run-rules.ts';

interface Draft {
  readonly rule: Rule;
  readonly rank: number;
  readonly first: Report;
  readonly id: string;
  readonly hookups: Set<string>;
  readonly moments: Set<string>;
  readonly touches: Set<string>;
}

/** The findings in what was said: the same thing in several hook-ups or moments once, causes before consequences. */
export function findingsFrom(facts: Facts, said: readonly Said[]): Finding[] {
  const drafts = new Map<string, Draft>();
  const every = facts.hookups.map(({ hookup }) => hookup.id);
  for (const { rule, rank, report } of said) {
    const id = `${rule.id}:${report.message}@${nameOfPlace(report.at[0])}`;
    const draft = drafts.get(id);
    const known = draft ?? {
      rule,
      rank,
      first: report,
      id,
      hookups: new Set(),
      moments: new Set(),
      touches: new Set(),
    };
    if (!draft || isWorse(report, draft.first)) drafts.set(id, { ...known, first: report });
    for (const hookup of report.hookup === undefined ? every : [report.hookup]) known.hookups.add(hookup);
    if (report.moment !== undefined) known.moments.add(report.moment);
    for (const touch of [...report.at.flatMap(touchesOf), ...(report.touches ?? [])]) known.touches.add(touch);
  }
  const list = [...drafts.values()].sort(byGravity);
  const causes = findCauses(list);
  const findings = list.map((draft) => toFinding(facts.station, draft, causes.get(draft.id)));
  return orderByCause(findings);
}

/** The worst of several is the one that is told; rounding in the last digits does not make it worse. */
function isWorse(report: Report, told: Report): boolean {
  const graver = severities.indexOf(told.severity) - severities.indexOf(report.severity);
  const [weight, before] = [report.weight ?? 0, told.weight ?? 0];
  return graver !== 0 ? graver > 0 : weight - before > 1e-6 * Math.abs(before);
}

const byGravity = (a: Draft, b: Draft) =>
  severities.indexOf(a.first.severity) - severities.indexOf(b.first.severity) || a.rank - b.rank;

/** `receiver.power.centre`, `cable R1.a`: a place as it stands in a finding's id. */
export function nameOfPlace(place: Place): string {
  if ('cable' in place) return `cable ${place.cable}${place.end ? `.${place.end}` : ''}`;
  return [place.unit, place.port, place.contact].filter((part) => part !== undefined).join('.');
}

const touchesOf = (place: Place): string[] => ('cable' in place ? [`cable:${place.cable}`] : [`unit:${place.unit}`]);

/** For each finding that follows from another, the id of the one at the root. */
function findCauses(list: readonly Draft[]): Map<string, string> {
  const direct = new Map<string, Draft>();
  for (const draft of list) {
    const candidates = list.filter(
      // A cause stands before its consequences in the rules' own order, which so can't run in a circle.
      (other) => other.rank < draft.rank && causesOf(draft).includes(other.rule.id) && isTogether(draft, other),
    );
    // That order puts the likelier cause first.
    candidates.sort((a, b) => a.rank - b.rank);
    if (candidates[0]) direct.set(draft.id, candidates[0]);
  }
  const roots = new Map<string, string>();
  for (const [id, cause] of direct) {
    let root = cause;
    for (let next = direct.get(root.id); next; next = direct.get(root.id)) root = next;
    roots.set(id, root.id);
  }
  return roots;
}

const causesOf = (draft: Draft): readonly string[] => draft.first.follows ?? draft.rule.follows;

const isTogether = (a: Draft, b: Draft): boolean => overlap(a.touches, b.touches) && overlap(a.hookups, b.hookups);

function overlap(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  for (const item of a) if (b.has(item)) return true;
  return false;
}

function toFinding(station: Station, draft: Draft, cause: string | undefined): Finding {
  const { rule, first } = draft;
  const values = first.values;
  const accepted = station.accepted.find((a) => a.finding === draft.id && a.figures === figuresOf(values));
  return {
    id: draft.id,
    rule: rule.id,
    severity: first.severity,
    title: rule.title,
    message: fillMessage(rule.messages[first.message] ?? '', values),
    why: rule.why,
    advice: rule.advice,
    at: first.at,
    values,
    hookups: [...draft.hookups],
    moments: momentNames.filter((name) => draft.moments.has(name)),
    ...(cause !== undefined && { causedBy: cause }),
    ...(accepted && { accepted: accepted.reason }),
    ...(first.fix && { fix: first.fix }),
  };
}

/** Each cause followed by what follows from it, and as grave as the worst of that: no danger is hidden under a fault. */
function orderByCause(findings: readonly Finding[]): Finding[] {
  const groups = findings
    .filter((f) => f.causedBy === undefined)
    .map((root) => {
      const followers = findings.filter((f) => f.causedBy === root.id);
      return { root: asGraveAs(root, worstOf([root, ...followers.filter(isOpen)])), followers };
    });
  const grave = ({ root }: (typeof groups)[number]) => severities.indexOf(root.severity);
  return groups.sort((a, b) => grave(a) - grave(b)).flatMap(({ root, followers }) => [root, ...followers]);
}

const asGraveAs = (finding: Finding, severity: Finding['severity']): Finding =>
  finding.severity === severity ? finding : { ...finding, severity, own: finding.severity };

const isOpen = ({ accepted }: Finding): boolean => accepted === undefined;
