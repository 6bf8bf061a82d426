import {
  type Change,
  placeUnit,
  type ShelfKind,
  type Station,
  shelf,
  type Unit,
  type UnitKind,
} from '../../core/index.ts';
import { change, currentStation } from './document.ts';
import { findOwnKind, ownKindsStore } from './own-kinds.ts';
import { rememberRecent } from './recent-kinds.ts';
import { select } from './view.ts';

/** A kind of the shelf, the user's own ones included, by its id. */
export const shelfKind = (id: string): UnitKind | undefined =>
  findOwnKind(id)?.kind ?? shelf.find((item) => item.id === id)?.kind;

/** The user's own kinds, then the shelf's. */
export const allKinds = (): readonly ShelfKind[] => [...ownKindsStore.getState().kinds, ...shelf];

/** The change that puts a unit of the shelf, or of the user's own kinds, on a drawing. */
export function placing(station: Station, id: string, position: Unit['position']): Change {
  rememberRecent(id);
  return placeUnit(station, id, position, findOwnKind(id));
}

/** Makes a change that sets a unit down, and selects that unit. */
export function placeBy(step: Change) {
  const before = currentStation();
  change(step);
  const placed = currentStation().units.slice(before.units.length);
  select({ units: placed.map((unit) => unit.id) });
}
