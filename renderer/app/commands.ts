import { drawingView } from '../canvas/drawing-view.ts';
import type { ShellCommand } from '../shell/bridge.ts';
import { redoStep, undoStep } from '../store/document.ts';
import { chooseTheme, showStage } from '../store/view.ts';
import { showCautions } from './cautions.ts';
import { openSample, save } from './document-actions.ts';
import { duplicateSelection, removeSelection, selectAll } from './edit-actions.ts';
import { openFind } from './find-store.ts';
import { printSheet, savePdf } from './print-actions.ts';

type Named = Exclude<ShellCommand, `sample:${string}`>;

const actions: Record<Named, () => void> = {
  save: () => void save(),
  'save-as': () => void save(true),
  print: () => void printSheet(),
  'save-pdf': () => void savePdf(),
  undo: undoStep,
  redo: redoStep,
  duplicate: duplicateSelection,
  delete: removeSelection,
  'select-all': selectAll,
  find: openFind,
  'stage-draw': () => showStage('draw'),
  'stage-check': () => showStage('check'),
  'stage-cables': () => showStage('cables'),
  'stage-budget': () => showStage('budget'),
  'zoom-to-fit': () => drawingView.fit(),
  'zoom-in': () => drawingView.zoomIn(),
  'zoom-out': () => drawingView.zoomOut(),
  'theme-light': () => chooseTheme('light'),
  'theme-dark': () => chooseTheme('dark'),
  'theme-system': () => chooseTheme('system'),
  cautions: showCautions,
};

/** What a dialog in front of the drawing keeps from it. */
const ofDrawing: ReadonlySet<ShellCommand> = new Set(['undo', 'redo', 'duplicate', 'delete', 'select-all']);

/** Does what a menu asks for; the same actions are behind the buttons and keys. */
export function obey(command: ShellCommand) {
  if (ofDrawing.has(command) && document.querySelector('dialog[open]')) return;
  if (command.startsWith('sample:')) void openSample(command.slice('sample:'.length));
  else actions[command as Named]?.();
}
