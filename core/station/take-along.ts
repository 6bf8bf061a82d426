import { hasPlaceOf, hasPort, hasPosition, namedByStep } from './named.ts';
import { limitOfOwnFigure, ownFigureProblem } from './own-figure.ts';
import { findUnit } from './parts.ts';
import type { Hookup, Station, Unit } from './schema/schema.ts';
import type { UnitKind } from './schema/unit-kind.ts';

/**
 * A station after something went from it, without what named that and now names nothing: own figures, settings,
 * sides and rings of a kind that is described otherwise; acceptances and readings at what is gone, which the next unit or cable
 * of the same id would take for its own. What named nothing before stays.
 */
export function takeAlong(before: Station, after: Station): Station {
  const isLost = (has: (station: Station) => boolean) => has(before) && !has(after);
  const kinds = new Map(after.units.map((unit) => [unit.id, kindsOf(before, after, unit)]));
  return {
    ...after,
    units: after.units.map((unit) => keepNamed(unit, kinds.get(unit.id))),
    hookups: after.hookups.map((hookup) => keepPositions(hookup, kinds)),
    accepted: after.accepted.filter(({ finding }) => !isLost((station) => hasPlaceOf(station, finding))),
    readings: after.readings.filter(({ step }) => !namedByStep(step).some(isLost)),
  };
}

/** The kind that a unit was of and the one that it is of now, where that is another. */
interface Kinds {
  readonly was: UnitKind;
  readonly is: UnitKind;
}

function kindsOf(before: Station, after: Station, unit: Unit): Kinds | undefined {
  const was = before.kinds[findUnit(before, unit.id)?.kind ?? ''];
  const is = after.kinds[unit.kind];
  return was && is && was !== is ? { was, is } : undefined;
}

/** A unit without what named something in the kind that it was of and names nothing in the one that it is of now. */
export function keepNamed(unit: Unit, kinds: Kinds | undefined): Unit {
  if (!kinds) return unit;
  const { was, is } = kinds;
  const { overrides, settings, sides, rings, ...rest } = unit;
  const left = {
    overrides: keep(overrides, (key, value) =>
      limitOfOwnFigure(is, key) ? ownFigureProblem(is, key, value) === undefined : !limitOfOwnFigure(was, key),
    ),
    settings: keep(settings, (id, position) => hasPosition(is, id, position) || !hasPosition(was, id, position)),
    sides: keep(sides, (port) => hasPort(is, port) || !hasPort(was, port)),
    rings: keep(rings, (port) => hasPort(is, port) || !hasPort(was, port)),
  };
  return { ...rest, ...withoutEmpty(left) };
}

function keepPositions(hookup: Hookup, kinds: ReadonlyMap<string, Kinds | undefined>): Hookup {
  if (!hookup.settings || ![...kinds.values()].some(Boolean)) return hookup;
  const settings = Object.entries(hookup.settings).flatMap(([unit, own]) => {
    const { was, is } = kinds.get(unit) ?? {};
    if (!was || !is) return [[unit, own] as const];
    const left = keep(own, (id, position) => hasPosition(is, id, position) || !hasPosition(was, id, position));
    return left && Object.keys(left).length > 0 ? [[unit, left] as const] : [];
  });
  return { ...hookup, settings: Object.fromEntries(settings) };
}

function keep<T>(
  record: Readonly<Record<string, T>> | undefined,
  isKept: (key: string, value: T) => boolean,
): Record<string, T> | undefined {
  return record && Object.fromEntries(Object.entries(record).filter(([key, value]) => isKept(key, value)));
}

const withoutEmpty = <T extends object>(fields: T): T =>
  Object.fromEntries(Object.entries(fields).filter(([, v]) => v && Object.keys(v).length > 0)) as T;
