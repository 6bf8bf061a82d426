import type { Finding } from '../../rules/finding.ts';
import { edit } from '../../station/edit.ts';
import type { Station } from '../../station/schema/schema.ts';
import { type Survey, survey } from '../../survey.ts';
import type { Act } from './act.ts';
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
const mostRivals = 2;
/** So many acts are tried for each, the likeliest first. */
const mostTried = 80;
/** A plug this far from what is found may be behind it. */
const leadsAway = 2;
/** An act may make a drawing a little unlikelier: power that comes straight from the supply is not wrong. */
const leastGain = -8;
/** An act that makes the drawing so much likelier than another is believed before it. */
const clearly = 4;

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
    if (best && !best.after.findings.some(isHarm) && gain <= best.gain - clearly) break;
    const after = survey(edit(now.station, act.change), now);
    const { gone, come } = difference(now.findings, after.findings);
    if (!gone.some(isHarm) || come.some((f) => f.severity !== 'note')) continue;
    const tried = { act, gain, after, gone };
    good.push(tried);
    if (!best || compare(tried, best) < 0) best = tried;
  }
  if (!best) return null;
  const rivals = good.filter((other) => other !== best && isRival(best as Tried, other));
  // Of many that do the same, none is it.
  if (rivals.length > mostRivals) return null;
  const explains = best.gone as [Finding, ...Finding[]];
  return { cause: { acts: [best.act, ...rivals.map(({ act }) => act)], explains }, after: best.after };
}

const countOf = (findings: readonly Finding[], severity: Finding['severity']): number =>
  findings.filter((f) => isHarm(f) && f.severity === severity).length;

const byHarm = (one: Tried, two: Tried): number =>
  countOf(two.gone, 'danger') - countOf(one.gone, 'danger') || countOf(two.gone, 'fault') - countOf(one.gone, 'fault');

/** What takes more away, then what makes the drawing likelier, then what moves less. */
const compare = (one: Tried, two: Tried): number =>
  byHarm(one, two) || two.gain - one.gain || one.act.cables.length - two.act.cables.length;

/** An act with other cables that does as much, and is about as likely. */
const isRival = (best: Tried, other: Tried): boolean =>
  byHarm(best, other) === 0 &&
  best.gain - other.gain < clearly &&
  !best.act.cables.every((id) => other.act.cables.includes(id));

/** The acts that touch the places of what is found, the likeliest first. */
export function likeliest({ station, findings }: Survey): { act: Act; gain: number }[] {
  const touched = touchedBy(station, findings.filter(isHarm));
  return listActs(station, { ...touched, asDrawn: true })
    .map((act) => ({ act, gain: gainOf(station, act) }))
    .filter(({ gain }) => gain >= leastGain)
    .sort((one, two) => two.gain - one.gain || one.act.cables.length - two.act.cables.length)
    .slice(0, mostTried);
}

/** The cables, ports and units that findings name, and those that hang on them, a few leads away. */
function touchedBy(station: Station, findings: readonly Finding[]): Touched {
  const places = findings.flatMap((f) => f.at);
  const cables = new Set(places.flatMap((place) => ('cable' in place ? [place.cable] : [])));
  const units = new Set(places.flatMap((place) => ('unit' in place ? [place.unit] : [])));
  const ports = places.flatMap((place) => ('unit' in place && place.port ? [`${place.unit}.${place.port}`] : []));
  for (let step = 0; step < leadsAway; step++) {
    const here = station.cables.filter((c) => cables.has(c.id) || units.has(c.a.unit) || units.has(c.b.unit));
    for (const { id, a, b } of here) {
      cables.add(id);
      units.add(a.unit);
      units.add(b.unit);
    }
  }
  return { cables, ports: new Set(ports), units };
}

interface Touched {
  readonly cables: ReadonlySet<string>;
  readonly ports: ReadonlySet<string>;
  readonly units: ReadonlySet<string>;
}

/** How much likelier the cables that an act moves lie after it. */
function gainOf(station: Station, { cables, change }: Act): number {
  return oddness(station, cables) - oddness(edit(station, change), cables);
}
