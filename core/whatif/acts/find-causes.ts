import type { Finding } from '../../rules/finding.ts';
import { edit } from '../../station/edit.ts';
import { findCable } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import { type Survey, survey } from '../../survey.ts';
import type { Act } from './act.ts';
import { insideOf } from './alike.ts';
import { difference, isHarm } from './harm.ts';
import { listActs } from './list-acts.ts';
import { oddness } from './oddness.ts';

/** What a hand did wrong on a drawing, and what is found because of it. */
export interface Cause {
  /** What puts it right; a further one where either does and nothing tells which. */
  readonly acts: readonly [Act, ...Act[]];
  /** All that is no longer found then, dangers and faults among it; worst first. */
  readonly explains: readonly [Finding, ...Finding[]];
}

/** More than one mistake at a time is rare, and each further one makes it less sure. */
const mostCauses = 3;
const mostNamed = 3;
const mostOthers = 1;
/** So many acts are tried for each, the likeliest first. */
const mostTried = 150;
/** A plug this far from what is found may be behind it. */
const leadsAway = 4;
/** In a large station no further than this many leads. */
const mostLeads = 40;
/** An act may make a drawing a little unlikelier: power that comes straight from the supply is not wrong. */
const leastGain = -5;
/** A plug that is moved alone goes where it is likelier to belong, or as likely. */
const leastMoved = -2;
/** An act that makes the drawing so much likelier than another is believed before it. */
const clearly = 4;
/** What works again may be marginal; each doubt that comes makes an act so much less likely, so many at most. */
const ofDoubt = 3;
const mostDoubts = 3;
/** One that makes it so much likelier is named alone. */
const barely = 9;

/**
 * The acts behind the dangers and faults of a drawing: each takes away at least one of them, brings nothing above a
 * note, and does more than any act with other cables. None where that is not clear.
 */
export function findCauses(surveyed: Survey): Cause[] {
  const causes: Cause[] = [];
  let now = surveyed;
  while (causes.length < mostCauses && now.findings.some(isHarm)) {
    const found = findCause(now);
    if (!found) break;
    causes.push(found.cause);
    now = found.after;
  }
  return causes;
}

interface Tried {
  readonly act: Act;
  /** How much likelier the drawing is after it. */
  readonly gain: number;
  readonly after: Survey;
  readonly gone: readonly Finding[];
}

function findCause(now: Survey): { cause: Cause; after: Survey } | null {
  let best: Tried | null = null;
  const good: Tried[] = [];
  for (const { act, gain } of likeliest(now)) {
    // Whatever is less likely than what puts all right would not be believed.
    if (best && !best.after.findings.some(isHarm) && gain < best.gain - clearly) break;
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
  return { cause: { acts, explains: best.gone as [Finding, ...Finding[]] }, after: best.after };
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

/** The acts that touch the places of what is found, the likeliest first. */
function likeliest({ station, findings }: Survey): { act: Act; gain: number }[] {
  const touched = touchedBy(station, findings.filter(isHarm));
  const scope = { cables: new Set(touched.cables.keys()), ports: touched.ports, units: touched.units };
  const isThere = (place: Place) => 'unit' in place && touched.ports.has(`${place.unit}.${place.port}`);
  const far = ({ cables, at }: Act) => {
    if (cables.length === 0 || at.some(isThere)) return 0;
    return Math.min(...cables.map((id) => touched.cables.get(id) ?? leadsAway), leadsAway);
  };
  return oneOfDuals(station, listActs(station, { ...scope, asDrawn: true }))
    .map((act) => ({ act, gain: gainOf(station, act) + ofPanel(act) - far(act) }))
    .filter(({ act, gain }) => gain >= (act.kind === 'moved' ? leastMoved : leastGain))
    .sort((one, two) => two.gain - one.gain || one.act.cables.length - two.act.cables.length)
    .slice(0, mostTried);
}

/** Two jacks side by side are taken for each other more easily than two that are apart. */
function ofPanel({ at }: Act): number {
  const [one, two] = at.flatMap((place) => ('unit' in place && place.port !== undefined ? [place.unit] : []));
  return one !== undefined && one === two ? 1 : 0;
}

/** Leads that are alike exchanged at one end or at the other come to the same: one of the two. */
function oneOfDuals(station: Station, acts: readonly Act[]): Act[] {
  const met = new Set<string>();
  return acts.filter(({ id, kind, cables: [one = '', two = ''] }) => {
    const [first, second] = [findCable(station, one), findCable(station, two)];
    if (kind !== 'exchanged' || !first || !second || !isSameLead(first, second)) return true;
    const [, ends = ''] = /\.([ab]) .*\.([ab])$/.test(id) ? [id, id.replace(/^.*\.([ab]) .*\.([ab])$/, '$1$2')] : [];
    const key = (e: string) => `${one} ${two} ${e}`;
    const dual = [...ends].map((e) => (e === 'a' ? 'b' : 'a')).join('');
    if (met.has(key(dual))) return false;
    met.add(key(ends));
    return true;
  });
}

const isSameLead = (one: Cable, other: Cable): boolean =>
  insideOf(one) === insideOf(other) && String(one.hookups) === String(other.hookups);

/** The cables at what findings name, and those that hang on them with how many leads are between; ports and units. */
function touchedBy(station: Station, findings: readonly Finding[]): Touched {
  const places = findings.flatMap((f) => f.at);
  const cables = new Map<string, number>(places.flatMap((place) => ('cable' in place ? [[place.cable, 0]] : [])));
  const units = new Set(places.flatMap((place) => ('unit' in place ? [place.unit] : [])));
  const ports = places.flatMap((place) => ('unit' in place && place.port ? [`${place.unit}.${place.port}`] : []));
  for (let step = 0; step < leadsAway && cables.size < mostLeads; step++) {
    const here = station.cables.filter((c) => cables.has(c.id) || units.has(c.a.unit) || units.has(c.b.unit));
    for (const { id, a, b } of here) {
      if (!cables.has(id)) cables.set(id, step);
      units.add(a.unit);
      units.add(b.unit);
    }
  }
  return { cables, ports: new Set(ports), units };
}

interface Touched {
  readonly cables: ReadonlyMap<string, number>;
  readonly ports: ReadonlySet<string>;
  readonly units: ReadonlySet<string>;
}

/** How much likelier the cables that an act moves lie after it. */
function gainOf(station: Station, { cables, change }: Act): number {
  return oddness(station, cables) - oddness(edit(station, change), cables);
}
