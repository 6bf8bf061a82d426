import { findCable, findUnit } from './parts.ts';
import type { Station, Unit } from './schema/schema.ts';
import type { UnitKind } from './schema/unit-kind.ts';

/** Whether a station has what a name names. What an acceptance or a reading is about is a name in a text. */
export type Named = (station: Station) => boolean;

/** A unit's setting at a position. */
export const hasPosition = (kind: UnitKind, setting: string, position: string): boolean =>
  kind.settings?.find((s) => s.id === setting)?.options.some((o) => o.id === position) ?? false;

export const hasPort = (kind: UnitKind, port: string): boolean => kind.ports.some((p) => p.id === port);

/**
 * Whether a station has the place of a finding: `rule:message@unit.port.contact`, `rule:message@cable d1.a`. True where
 * that can't be told.
 */
export function hasPlaceOf(station: Station, finding: string): boolean {
  const at = finding.indexOf('@');
  if (at < 0) return true;
  const place = finding.slice(at + 1);
  const cable = /^cable (.+?)(?:\.[ab])?$/.exec(place)?.[1];
  if (cable !== undefined)
    return findCable(station, cable) !== undefined || findCable(station, place.slice(6)) !== undefined;
  return unitsAt(station, place).some((unit) => hasInside(station, unit, place.slice(unit.id.length + 1)));
}

/** The units that a place may begin with: an id may have dots in it. */
function unitsAt(station: Station, place: string): Unit[] {
  const parts = place.split('.');
  return parts.flatMap((_, i) => findUnit(station, parts.slice(0, i + 1).join('.')) ?? []);
}

function hasInside({ kinds }: Station, unit: Unit, rest: string): boolean {
  const kind = kinds[unit.kind];
  if (!kind || rest === '' || /^(@|chassis)/.test(rest)) return true;
  const named = [...kind.ports, ...kind.elements, ...(kind.actors ?? [])];
  return named.some(({ id }) => rest === id || rest.startsWith(`${id}.`));
}

/** The units and cables that the step of a reading names, each as a question: `unit/receiver/amps`, `line/d1/ohms`. */
export const namedByStep = (step: string): Named[] =>
  step
    .split('/')
    .slice(1)
    .map((part) => (station) => unitsAt(station, part).length > 0 || findCable(station, part) !== undefined);
