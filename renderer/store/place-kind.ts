import { placeUnit, shelf, type Unit, type UnitKind } from '../../core/index.ts';
import { change, currentStation } from './document.ts';
import { findOwnKind } from './own-kinds.ts';
import { rememberRecent } from './recent-kinds.ts';
import { select } from './view.ts';

/** A kind of the shelf, the user's own ones included, by its id. */
export const shelfKind = (id: string): UnitKind | undefined =>
  findOwnKind(id)?.kind ?? shelf.find((item) => item.id === id)?.kind;

/** Puts a unit of the shelf, or of the user's own kinds, on the drawing and selects it. */
export function placeKind(id: string, position: Unit['position']) {
  const before = currentStation();
  if (!shelfKind(id) && !before.kinds[id]) return;
  change(placeUnit(before, id, position, findOwnKind(id)));
  rememberRecent(id);
  const placed = currentStation().units.slice(before.units.length);
  select({ units: placed.map((unit) => unit.id) });
}
