import type { ShelfKind } from '../../../core/index.ts';
import { currentStation } from '../../store/document.ts';
import { placeBy, placing } from '../../store/place-kind.ts';
import { drawingView } from '../drawing-view.ts';
import { sizeOf } from '../layout.ts';

/** Sets a unit of the shelf down in free paper and selects it; gives its id. */
export function placeInView({ id, kind }: ShelfKind): string | undefined {
  const { width, height } = sizeOf(kind, kind.name);
  placeBy(placing(currentStation(), id, drawingView.freePlace(width, height)));
  return currentStation().units.at(-1)?.id;
}
