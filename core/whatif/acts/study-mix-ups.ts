import { type Finding, severities } from '../../rules/finding.ts';
import { edit } from '../../station/edit.ts';
import { findCable } from '../../station/parts.ts';
import type { Station } from '../../station/schema/schema.ts';
import { type Survey, survey } from '../../survey.ts';
import type { Act } from './act.ts';
import { insideOf, looksOf } from './alike.ts';
import { easeOf } from './ease-of.ts';
import { difference } from './harm.ts';
import { isPrevented } from './jack-pairs.ts';
import { listActs } from './list-acts.ts';
import type { MixUp, MixUpStudy } from './mix-up.ts';

/**
 * Tries all that a hand could do by mistake to a station, one thing at a time, and compares what is found then with
 * what is found as it is drawn. What rings tell a hand in time is counted, not tried. `tell` hears after each try how many of how many are done.
 */
export function studyMixUps(
  station: Station,
  tell: (done: number, of: number) => void = () => {},
  surveyed: Survey = survey(station),
): MixUpStudy {
  const all = listActs(station);
  const acts = all.filter((act) => !isPrevented(station, act));
  const found = new Map<string, MixUp>();
  let harmless = 0;
  acts.forEach((act, i) => {
    const harms = harmsOf(surveyed, act);
    tell(i + 1, acts.length);
    const [worst, ...rest] = harms;
    if (!worst) {
      harmless += 1;
      return;
    }
    const key = `${sortOf(station, act)} ${harms.map((f) => `${f.rule} ${f.severity}`).join()}`;
    const known = found.get(key);
    if (known) found.set(key, { ...known, alike: [...known.alike, act] });
    else
      found.set(key, {
        act,
        alike: [],
        severity: worst.severity,
        harms: [worst, ...rest],
        strikes: strikesAt(worst),
        ease: easeOf(station, act),
      });
  });
  const prevented = all.length - acts.length;
  return { tried: acts.length, harmless, prevented, mixUps: [...found.values()].sort(byHarm) };
}

/** The same for acts whose leads and jacks are alike: those of two outlets with the same fuse. */
function sortOf(station: Station, { id, kind, at }: Act): string {
  if (kind !== 'moved' && kind !== 'exchanged') return id;
  const jacks = at.flatMap((place) =>
    'unit' in place && place.port !== undefined
      ? `${place.unit} ${looksOf(station, { unit: place.unit, port: place.port })}`
      : [],
  );
  const leads = at.flatMap((place) => {
    const cable = 'cable' in place ? findCable(station, place.cable) : undefined;
    return cable ? insideOf(cable) : [];
  });
  return JSON.stringify([kind, jacks, leads]);
}

/** What an act brings, worst first; empty where there is nothing above a note among it. */
function harmsOf(surveyed: Survey, act: Act): readonly Finding[] {
  const { come } = difference(surveyed.findings, survey(edit(surveyed.station, act.change), surveyed).findings);
  return come.some((f) => f.severity !== 'note') ? come : [];
}

const byHarm = (one: MixUp, two: MixUp): number =>
  severities.indexOf(one.severity) - severities.indexOf(two.severity) || two.ease.score - one.ease.score;

/** When a finding comes about, as it stands in a sentence. */
function strikesAt({ moments }: Finding): string {
  if (moments.length === 0 || moments.includes('receive')) return 'at plugging in';
  if (moments.includes('going over') || moments.includes('sending')) return 'at the first press';
  return 'when the key is let go';
}
