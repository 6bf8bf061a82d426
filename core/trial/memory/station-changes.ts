import { hookupsOf } from '../../station/parts.ts';
import type { Station, Unit } from '../../station/schema/schema.ts';

/** Whether plan, settings, connectors and the names of the hook-ups, on which everything rests, are the same. */
export const isSameGround = (a: Station, b: Station): boolean =>
  a.plan === b.plan &&
  a.settings === b.settings &&
  a.connectors === b.connectors &&
  (a.hookups === b.hookups || hookupNames(a) === hookupNames(b));

const hookupNames = (station: Station): string => JSON.stringify(hookupsOf(station).map(({ id, name }) => [id, name]));

/** Ids and numbers from which a fix takes new ones. */
export const numberingOf = ({ units, cables }: Station): string =>
  JSON.stringify([units.map(({ id, name, kind }) => [id, name, kind]), cables.map(({ id, number }) => [id, number])]);

/** Units that came, went or changed: in what they are, or only in where they stand. */
export function changedUnits(then: Station, now: Station): { inside: string[]; outside: string[] } {
  const before = new Map(then.units.map((unit) => [unit.id, unit]));
  const [inside, outside]: [string[], string[]] = [[], []];
  for (const unit of now.units) {
    const was = before.get(unit.id);
    before.delete(unit.id);
    if (was === unit) continue;
    if (was && isSameApartFromPlace(was, unit)) outside.push(unit.id);
    else inside.push(unit.id);
  }
  return { inside: [...inside, ...before.keys()], outside };
}

function isSameApartFromPlace(a: Unit, b: Unit): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as Set<keyof Unit>;
  keys.delete('position');
  return [...keys].every((key) => a[key] === b[key]);
}

/** Ids of the cables that came, went or changed, in whatever hook-up. */
export function changedCables(then: Station, now: Station): Set<string> {
  const before = new Map(then.cables.map((cable) => [cable.id, cable]));
  const changed = new Set<string>();
  for (const cable of now.cables) {
    if (before.get(cable.id) !== cable) changed.add(cable.id);
    before.delete(cable.id);
  }
  for (const id of before.keys()) changed.add(id);
  return changed;
}

/** Units at the ends of these cables, then and now. */
export const endsOfCables = (cables: ReadonlySet<string>, ...stations: readonly Station[]): string[] =>
  cables.size === 0
    ? []
    : stations.flatMap((station) => station.cables.flatMap(({ id, a, b }) => (cables.has(id) ? [a.unit, b.unit] : [])));

/** Units that a cable of any hook-up joins to one of these. */
export function neighboursOf(units: ReadonlySet<string>, { cables }: Station): Set<string> {
  const neighbours = new Set<string>();
  if (units.size === 0) return neighbours;
  for (const { a, b } of cables) {
    if (units.has(a.unit)) neighbours.add(b.unit);
    if (units.has(b.unit)) neighbours.add(a.unit);
  }
  return neighbours;
}
