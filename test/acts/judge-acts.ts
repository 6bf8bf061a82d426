import { type Finding, severities } from '../../core/rules/finding.ts';
import { edit } from '../../core/station/edit.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import type { Act } from '../../core/whatif/acts/act.ts';
import { findCauses } from '../../core/whatif/acts/find-causes.ts';
import { isHarm } from '../../core/whatif/acts/harm.ts';
import { listActs } from '../../core/whatif/acts/list-acts.ts';

/** What became of one mix-up that was drawn. */
export interface Verdict {
  readonly act: Act;
  readonly severity: Finding['severity'];
  /** The first cause that is named moves the same cables, or the same unit's switch. */
  readonly named: boolean;
  /** What it offers brings back a station with no more harm than before. */
  readonly fixed: boolean;
  /** What is said instead, where it is not both. */
  readonly said: string;
}

/** Draws each mix-up of a station that does harm (every so manyth of them), and looks whether the act is named. */
export function* judgeActs(station: Station, every = 1): Generator<Verdict> {
  const right = survey(station);
  const known = new Set(right.findings.filter(isHarm).map((f) => f.id));
  const isNew = (f: Finding) => isHarm(f) && !known.has(f.id);
  let met = 0;
  for (const act of listActs(station)) {
    met += 1;
    if (met % every !== 0) continue;
    const wrong = survey(edit(station, act.change), right);
    const [worst] = wrong.findings.filter(isNew).sort((a, b) => rank(a) - rank(b));
    if (!worst) continue;
    const [first] = findCauses(wrong);
    const named =
      first?.acts.some((one) =>
        act.cables.length > 0 ? act.cables.every((id) => one.cables.includes(id)) : isSamePlace(one, act),
      ) ?? false;
    const fixes = first?.acts.map(({ change }) => survey(edit(wrong.station, change), wrong)) ?? [];
    const fixed = fixes.some(({ findings }) => !findings.some(isNew));
    const instead = first ? first.acts.map((a) => `${a.words} [${a.kind}]`).join(' OR ') : 'nothing';
    const told = wrong.findings.filter(isNew).map((f) => `${f.severity[0]} ${f.rule}`);
    yield { act, severity: worst.severity, named, fixed, said: named && fixed ? '' : `${instead} <- ${told.join(', ')}` };
  }
}

const rank = ({ severity }: Finding): number => severities.indexOf(severity);

const isSamePlace = (one: Act, other: Act): boolean => JSON.stringify(one.at) === JSON.stringify(other.at);
