import type { Limit } from '../quantity/limits.ts';
import { lowerFirst } from '../quantity/lower-first.ts';
import { figureLabels } from './figure-labels.ts';
import { limitOfOwnFigure } from './own-figure.ts';
import type { UnitElement } from './schema/unit-element.ts';
import type { UnitKind } from './schema/unit-kind.ts';

/** One figure of an element that the user may replace by their own. */
export interface ElementFigure {
  /** `elementId.field`, as the document keeps the user's own figures. */
  readonly key: string;
  readonly label: string;
  /** What it can be. */
  readonly limit: Limit;
  readonly value: number;
}

const drawUnits = { current: 'A', power: 'W', resistance: 'ohm' } as const;

/** The figures of an element in the order in which they are asked for; only those that it has. */
export function elementFigures(kind: UnitKind, element: UnitElement): ElementFigure[] {
  const values = element as unknown as Record<string, unknown>;
  const figure = (path: string, label: string, value: unknown): ElementFigure[] => {
    const key = `${element.id}.${path}`;
    const limit = limitOfOwnFigure(kind, key);
    return typeof value === 'number' && limit ? [{ key, label, limit, value }] : [];
  };
  const own = figureLabels[element.type].flatMap(([field, label]) => figure(field, label, values[field]));
  if (element.type !== 'load') return own;
  const unit = drawUnits[element.law];
  const states = (element.states ?? []).flatMap((state, i) => {
    const on = state.when.on?.map((id) => kind.actors?.find((a) => a.id === id)?.label ?? id).join(', ');
    const label = on ? `Draws, ${lowerFirst(on)} on` : 'Draws otherwise';
    return figure(`states.${i}.amount`, label, state.amount);
  });
  const draws = [...figure('amount', 'Draws', element.amount), ...states];
  return [...draws.map((draw) => ({ ...draw, limit: { ...draw.limit, unit } })), ...own];
}
