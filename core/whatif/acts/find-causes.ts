import type { Finding } from '../../rules/finding.ts';
import { edit } from '../../station/edit.ts';
import type { Station } from '../../station/schema/schema.ts';
import { type Survey, survey } from '../../survey.ts';
import type { Act } from './act.ts';
import { difference, isHarm } from './harm.ts';
import { likeliestActs } from './likeliest-acts.ts';

/** What a hand did wrong on a drawing, and what is found because of it. */
export interface Cause {
  /** What puts it right; a further one where either does and nothing tells which. */
  readonly acts: readonly [Act, ...Act[]];
  /** All that is no longer found then, dangers and faults among it; worst first. */
  readonly explains: readonly [Finding, ...Finding[]];
}

/** More than one mistake at a time is rare, and each further one makes it less sure. */
const mostCauses = 3;
/** So many acts with other cables are named where they do as much; with more left than this, none. */
const mostNamed = 3;
const mostOthers = 1;
/** Units and cables looked at again, in all. */
const partsTried = 12_000;
const mostTries = 300;
const leastTries = 40;
/** An act that makes the drawing so much likelier than another is believed before it. */
const clearly = 4;
/** What works again may be marginal; each doubt that comes makes an act so much less likely, so many at most. */
const ofDoubt = 3;
const mostDoubts = 3;
/** One that makes it so much likelier is named alone. */
const barely = 9;

/**
 * The acts behind the dangers and faults of a drawing: each takes away at least one of them with all that
 * follows from it, brings no danger and no fault, and does more than any act with other cables. None where that is not
 * clear.
 */
export function findCauses(surveyed: Survey): Cause[] {
  const causes: Cause[] = [];
  let now = surveyed;
  let tries = triesFor(surveyed.station);
  while (causes.length < mostCauses && now.findings.some(isHarm)) {
    const found = findCause(now, tries);
    if (!found) break;
    tries -= found.tries;
    causes.push(found.cause);
    now = found.after;
  }
  return causes;
}

/** How many acts are tried on a drawing, all its causes together: each is a survey, and takes longer on a large one. */
const triesFor = ({ units, cables }: Station): number =>
  Math.min(mostTries, Math.max(leastTries, Math.round(partsTried / Math.max(1, units.length + cables.length))));

interface Tried {
  readonly act: Act;
  /** How much likelier the drawing is after it. */
  readonly gain: number;
  readonly after: Survey;
  readonly gone: readonly Finding[];
}

function findCause(now: Survey, mostHere: number): { cause: Cause; after: Survey; tries: number } | null {
  let tries = 0;
  let best: Tried | null = null;
  const good: Tried[] = [];
  for (const { act, gain } of likeliestActs(now).slice(0, mostHere)) {
    // Whatever is less likely than what puts all right would not be believed.
    if (best && !best.after.findings.some(isHarm) && gain < best.gain - clearly) break;
    tries += 1;
    const after = survey(edit(now.station, act.change), now);
    const { gone, come } = difference(now.findings, after.findings);
    if (!gone.some(isRoot) || come.some(isHarm)) continue;
    // An odder drawing is believed only where nothing is wrong with it.
    if (gain < 0 && after.findings.some(isHarm)) continue;
    const doubts = come.filter((f) => f.severity === 'doubt').length;
    const tried = { act, gain: gain - ofDoubt * Math.min(doubts, mostDoubts), after, gone };
    good.push(tried);
    if (!best || compare(tried, best) < 0) best = tried;
  }
  if (!best) return null;
  const { acts, others } = rivalsOf(best, good);
  // Of many that do the same, none is it.
  if (others > mostOthers) return null;
  return { cause: { acts, explains: best.gone as [Finding, ...Finding[]] }, after: best.after, tries };
}

/** What follows from something else goes away for many reasons. */
const isRoot = (finding: Finding): boolean => isHarm(finding) && finding.causedBy === undefined;

const countOf = (findings: readonly Finding[], severity: Finding['severity']): number =>
  findings.filter((f) => isHarm(f) && f.severity === severity).length;

const byHarm = (one: Tried, two: Tried): number =>
  countOf(two.gone, 'danger') - countOf(one.gone, 'danger') || countOf(two.gone, 'fault') - countOf(one.gone, 'fault');

/** What takes more away, then what makes the drawing likelier, then what moves less. */
const compare = (one: Tried, two: Tried): number =>
  byHarm(one, two) || two.gain - one.gain || one.act.cables.length - two.act.cables.length;

/** The best act and those with other cables that do as much and are hardly less likely, and how many more there are. */
function rivalsOf(best: Tried, good: readonly Tried[]): { acts: readonly [Act, ...Act[]]; others: number } {
  const sets = new Map<string, Act>();
  const equal = good.filter((other) => byHarm(best, other) === 0).sort(compare);
  let others = 0;
  for (const { act, gain } of equal) {
    const key = act.cables.length > 0 ? [...act.cables].sort().join() : act.id;
    if (sets.has(key)) continue;
    if (sets.size < mostNamed && best.gain - gain < barely) sets.set(key, act);
    else if (best.gain - gain < clearly) others += 1;
  }
  const [, ...more] = [...sets.values()];
  return { acts: [best.act, ...more], others };
}
