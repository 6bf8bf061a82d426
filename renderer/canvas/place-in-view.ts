import { placeUnit, type ShelfKind } from '../../core/index.ts';
import { change, currentStation } from '../store/document.ts';
import { select } from '../store/view.ts';
import { drawingView } from './drawing-view.ts';
import { sizeOf } from './layout.ts';

/** Sets a unit of the shelf down in free paper and selects it; gives its id. */
export function placeInView({ id, kind }: ShelfKind): string | undefined {
  const { width, height } = sizeOf(kind, kind.name);
  change(placeUnit(currentStation(), id, drawingView.freePlace(width, height)));
  const unit = currentStation().units.at(-1);
  if (unit) select({ units: [unit.id] });
  return unit?.id;
}
