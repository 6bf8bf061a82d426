import type { Mark } from '../../../core/index.ts';
import { change, currentStation } from '../../store/document.ts';
import { select, showStage, viewStore } from '../../store/view.ts';
import { gridPx } from '../cards/card-size.ts';
import { drawingView } from '../drawing-view.ts';
import { cardsOf } from '../layout.ts';
import type { Rect } from '../routing/geometry.ts';
import { zoneAround } from './zones.ts';

/** Sets a note down in free paper and opens it for writing. */
export const addNote = () => add('note', 'Note', placeFor(10 * gridPx, 4 * gridPx));

/** Draws a zone around the selected units, or an empty one in free paper. */
export function addZone() {
  const chosen = viewStore.getState().selection.units;
  const around = zoneAround(cardsOf(currentStation()).filter((c) => chosen.includes(c.id)));
  add('zone', 'Desk', around ?? placeFor(22 * gridPx, 14 * gridPx));
}

const placeFor = (width: number, height: number): Rect => ({ ...drawingView.freePlace(width, height), width, height });

function add(type: Mark['type'], text: string, { x, y, width, height }: Rect) {
  const taken = new Set(currentStation().marks?.map((m) => m.id));
  let count = 1;
  while (taken.has(`${type}-${count}`)) count++;
  const id = `${type}-${count}`;
  change({ type: 'addMarks', marks: [{ id, type, text, position: { x, y }, width, height }] });
  // Its words are written in its details.
  showStage('draw');
  select({ marks: [id] });
}
