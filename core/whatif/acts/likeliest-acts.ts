import type { Finding } from '../../rules/finding.ts';
import { edit } from '../../station/edit.ts';
import { findCable } from '../../station/parts.ts';
import type { Place } from '../../station/place.ts';
import type { Cable, Station } from '../../station/schema/schema.ts';
import type { Survey } from '../../survey.ts';
import type { Act } from './act.ts';
import { insideOf } from './alike.ts';
import { isHarm } from './harm.ts';
import { listActs } from './list-acts.ts';
import { oddness } from './oddness.ts';

/** So many acts, the likeliest ones. */
const mostTried = 150;
/** A plug this far from what is found may be behind it. */
const leadsAway = 4;
/** In a large station no further than this many leads. */
const mostLeads = 40;
/** An act may make a drawing a little odder: names at jacks are not all that there is. */
const leastGain = -5;
/** A plug that is moved alone goes where it is likelier to belong, or as likely. */
const leastMoved = -2;

/** An act that may put something right, and how much less odd the drawing is after it; nearer ones count for more. */
interface Likely {
  readonly act: Act;
  readonly gain: number;
}

/** The acts that touch the places of what is found, the likeliest first. */
export function likeliestActs({ station, findings }: Survey): Likely[] {
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

/** Leads that are alike exchanged at one end or at the other come to the same: one of the two, that on one panel if any. */
function oneOfDuals(station: Station, acts: readonly Act[]): Act[] {
  const kept = new Map<string, Act>();
  for (const act of acts) {
    const key = dualKey(station, act) ?? act.id;
    const other = kept.get(key);
    if (!other || ofPanel(act) > ofPanel(other)) kept.set(key, act);
  }
  return [...kept.values()];
}

/** The same for an exchange of two leads that are alike at one pair of their ends, and at the other pair. */
function dualKey(station: Station, { kind, at }: Act): string | null {
  const [one, two] = at.flatMap((place) =>
    'cable' in place && place.end ? [{ id: place.cable, end: place.end }] : [],
  );
  const [first, second] = [one, two].map((end) => end && findCable(station, end.id));
  if (kind !== 'exchanged' || !one || !two || !first || !second || !isSameLead(first, second)) return null;
  return `${one.id} ${two.id} ${one.end === two.end ? 'alike' : 'across'}`;
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
