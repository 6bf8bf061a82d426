import { drawingView } from '../../canvas/drawing-view.ts';
import { askPaper } from '../../print/book/book-store.ts';
import { redoStep, undoStep } from '../../store/document.ts';
import { showStage, stages } from '../../store/view.ts';
import { openFind } from '../dialogs/find-store.ts';
import { openFile, save } from '../document/document-actions.ts';
import { openSteps } from '../title/open-steps.ts';
import { duplicateSelection, removeSelection, selectAll } from './edit-actions.ts';
import { takeTyped } from './take-typed.ts';

const withControl: Record<string, (shift: boolean) => void> = {
  z: (shift) => (shift ? redoStep() : undoStep()),
  y: () => redoStep(),
  j: () => openSteps(),
  s: (shift) => void save(shift),
  o: () => void openFile(),
  k: () => openFind(),
  b: () => askPaper(),
  f: () => openFind(),
  d: () => duplicateSelection(),
  0: (shift) => (shift ? drawingView.fitSelection() : drawingView.fit()),
  ')': () => drawingView.fitSelection(),
  a: () => selectAll(),
};

/** Keys that an open text field keeps for itself. */
const ofFields = new Set(['z', 'y', 'a', 'd']);

/** Shortcuts of the whole window. On the desktop the menu has them; then they don't reach the page. */
export function listenToKeys() {
  window.addEventListener('keydown', (event) => {
    if (event.defaultPrevented || document.querySelector('dialog[open]')) return;
    const inField = isField(event.target);
    const key = event.key.toLowerCase();
    if (event.ctrlKey || event.metaKey) {
      const action = withControl[key];
      if (!action || event.altKey || (inField && ofFields.has(key) && !undoesDocument(event.target, key))) return;
      event.preventDefault();
      if (!ofFields.has(key)) takeTyped();
      action(event.shiftKey);
      return;
    }
    if ((event.key === 'Delete' || event.key === 'Backspace') && !inField) {
      removeSelection();
      return;
    }
    const stage = stages[Number(event.key) - 1];
    if (stage && !inField && !event.altKey) showStage(stage);
  });
}

/** Undo and redo in a field that nothing was typed into go to the document. */
const undoesDocument = (target: EventTarget | null, key: string): boolean =>
  (key === 'z' || key === 'y') && target instanceof HTMLElement && target.dataset['settled'] === 'true';

/** Whether typing goes to this element. */
export const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));
