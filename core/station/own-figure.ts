import { asKept, type Limit, limitProblem } from '../quantity/limits.ts';
import { type ElementField, elementFields } from './schema/element-fields.ts';
import type { Station, Unit } from './schema/schema.ts';
import type { UnitKind } from './schema/unit-kind.ts';

/**
 * The row of the table of limits for the figure `element.field` of a kind (`draw.states.0.amount` for one in a list);
 * null where the kind has no such figure, so that nobody's own one can take its place.
 */
export function limitOfOwnFigure(kind: UnitKind, key: string): Limit | null {
  for (const element of kind.elements) {
    if (!key.startsWith(`${element.id}.`)) continue;
    const limit = limitAt(element, elementFields[element.type], key.slice(element.id.length + 1).split('.'));
    if (limit) return limit;
  }
  return null;
}

/** Why a unit of a kind can't have this as its own figure, as a sentence; undefined where it can, or names none. */
export function ownFigureProblem(kind: UnitKind, key: string, value: number): string | undefined {
  const limit = limitOfOwnFigure(kind, key);
  return limit ? limitProblem(asKept(value, limit), limit) : undefined;
}

/** A station with every own figure in the sign that it is meant with. */
export const withMeantFigures = (station: Station): Station => ({
  ...station,
  units: station.units.map((unit) => withMeant(station, unit)),
});

function withMeant({ kinds }: Station, unit: Unit): Unit {
  const kind = kinds[unit.kind];
  if (!kind || !unit.overrides) return unit;
  const overrides = Object.entries(unit.overrides).map(([key, value]) => {
    const limit = limitOfOwnFigure(kind, key);
    return [key, limit ? asKept(value, limit) : value];
  });
  return { ...unit, overrides: Object.fromEntries(overrides) };
}

function limitAt(holder: object, fields: readonly ElementField[], path: readonly string[]): Limit | null {
  const [name = '', ...rest] = path;
  const field = fields.find((f) => f.name === name);
  const value = field && own(holder, name);
  if (!field || value === undefined) return null;
  if (field.holds === 'number') return rest.length === 0 ? field.limit : null;
  if (field.holds === 'object') return limitAt(value as object, field.fields, rest);
  const [row = '', ...inner] = rest;
  const item = field.holds === 'rows' ? own(value as object, row) : undefined;
  return field.holds === 'rows' && typeof item === 'object' && item ? limitAt(item, field.fields, inner) : null;
}

const own = (holder: object, key: string): unknown =>
  Object.hasOwn(holder, key) ? (holder as Record<string, unknown>)[key] : undefined;
