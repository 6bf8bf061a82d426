import { type Cable, type Change, edit, plural, type Station, savedText } from '../../../core/index.ts';
import { change, currentStation } from '../../store/document.ts';
import { select, viewStore } from '../../store/view.ts';
import { tell } from '../dialogs/questions.ts';
import { copyUnits } from './copy-units.ts';

/** Removes what is selected, cables of removed units included, as one step. */
export function removeSelection() {
  const { units, cables, marks } = viewStore.getState().selection;
  if (units.length + cables.length + marks.length === 0) return;
  change({
    type: 'all',
    name: removalName(units.length, cables.length, marks.length),
    changes: [
      { type: 'removeMarks', ids: [...marks] },
      { type: 'removeCables', ids: [...cables] },
      { type: 'removeUnits', ids: [...units] },
    ],
  });
  select({});
}

function removalName(units: number, cables: number, marks: number): string {
  if (units + cables === 0) return `Remove ${plural(marks, 'note or zone', 'notes and zones')}`;
  if (units === 0) return `Remove ${plural(cables, 'cable')}`;
  return `Remove ${plural(units, 'unit')}`;
}

export function selectAll() {
  const station = currentStation();
  select({
    units: station.units.map((u) => u.id),
    cables: station.cables.map((c) => c.id),
    marks: (station.marks ?? []).map((m) => m.id),
  });
}

/** Locks units where they are, or frees them. */
export const lockUnits = (ids: readonly string[], locked: boolean) =>
  change({
    type: 'all',
    name: locked ? 'Lock in place' : 'Unlock',
    changes: ids.map((id) => ({ type: 'updateUnit', id, set: { locked: locked ? true : undefined } }) as Change),
  });

/** Sets copies of the selected units, with the cables among them, beside them. */
export function duplicateSelection() {
  const station = currentStation();
  addCopies('Duplicate', station, viewStore.getState().selection.units);
}

/** A cable in those of its hook-ups that there are here; in all of them where there is none of its own. */
function inKnownHookups({ hookups, ...cable }: Cable, known: ReadonlySet<string>): Cable {
  const left = hookups?.filter((id) => known.has(id)) ?? [];
  return left.length > 0 ? { ...cable, hookups: left } : cable;
}

/** Adds copies of units of a station, this one or another, with all that they need, as one step. */
export function addCopies(name: string, from: Station, ids: readonly string[]) {
  const { units, cables: copies } = copyUnits(from, ids, currentStation());
  if (units.length === 0) return;
  const known = new Set(currentStation().hookups.map((h) => h.id));
  const cables = copies.map((cable) => inKnownHookups(cable, known));
  const { kinds, cableKinds, connectors } = from;
  const addition: Change = {
    type: 'all',
    name,
    changes: [
      { type: 'addUnits', units, carried: { kinds, connectors } },
      { type: 'addCables', cables, carried: { cableKinds, connectors } },
    ],
  };
  // The document's own description of a kind stays, and may lack a port or contact that a copied cable names.
  const made = savedText(edit(currentStation(), addition));
  if ('problems' in made) {
    void tell(
      `${name}: not done`,
      'This station describes some of these units or cables otherwise, so that they could not be put together again. Nothing is changed.',
      { problems: made.problems },
    );
    return;
  }
  change(addition);
  select({ units: units.map((u) => u.id) });
}
