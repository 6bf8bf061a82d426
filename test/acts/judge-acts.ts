import { type Finding, severities } from '../../core/rules/finding.ts';
import { edit } from '../../core/station/edit.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import type { Act } from '../../core/whatif/acts/act.ts';
import { explain } from '../../core/whatif/acts/explain.ts';
import { isHarm } from '../../core/whatif/acts/harm.ts';
import { listActs } from '../../core/whatif/acts/list-acts.ts';

/** What became of one mix-up that was drawn. */
export interface Verdict {
  readonly act: Act;
  readonly severity: Finding['severity'];
  /** The first finding names the cables that were moved, or the unit whose switch was. */
  readonly named: boolean;
  /** What it offers brings back a station with no more harm than before. */
  readonly fixed: boolean;
  /** What is said first, and what there is. */
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
    const { findings } = explain(wrong);
    const first = findings.find(isNew);
    const fixes = [first?.fix, ...(first?.orFix ?? [])].flatMap((fix) => (fix ? [fix] : []));
    const named = first !== undefined && isAbout(act, first);
    const fixed = fixes.some((fix) => !survey(edit(wrong.station, fix.change), wrong).findings.some(isNew));
    const told = wrong.findings.filter(isNew).map((f) => `${f.severity} ${f.rule}`);
    const said = `${first?.rule} “${first?.message}”, of ${told.join(', ')}`;
    yield { act, severity: worst.severity, named, fixed, said };
  }
}

const rank = ({ severity }: Finding): number => severities.indexOf(severity);

/** Whether a finding names the leads that an act moves, or the unit whose switch it sets. */
const isAbout = (act: Act, { at }: Finding): boolean =>
  act.cables.length > 0
    ? act.cables.every((id) => at.some((place) => 'cable' in place && place.cable === id))
    : act.at.some((one) => 'unit' in one && at.some((place) => 'unit' in place && place.unit === one.unit));
