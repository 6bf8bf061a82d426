import { drawingView } from '../../canvas/drawing-view.ts';
import { addNote, addZone } from '../../canvas/paper/add-mark.ts';
import { askPaper } from '../../print/book/book-store.ts';
import type { ShellCommand } from '../../shell/bridge.ts';
import { redoStep, undoStep } from '../../store/document.ts';
import { chooseTheme, select, showStage } from '../../store/view.ts';
import { showCautions } from '../dialogs/cautions.ts';
import { openFind } from '../dialogs/find-store.ts';
import { showKeys } from '../dialogs/show-keys.ts';
import { openSample, save } from '../document/document-actions.ts';
import { showOffer } from '../document/offer-kept.ts';
import { printSheet, savePdf } from '../document/print-actions.ts';
import { openSteps } from '../title/open-steps.ts';
import { duplicateSelection, removeSelection, selectAll } from './edit-actions.ts';
import { takeTyped } from './take-typed.ts';

type Named = Exclude<ShellCommand, `sample:${string}`>;

/** Everything that can be done from a menu, by the name under which it is found. */
const actions: Record<Named, { readonly label: string; readonly act: () => void }> = {
  save: { label: 'Save', act: () => void save() },
  'save-as': { label: 'Save as…', act: () => void save(true) },
  print: { label: 'Print this sheet…', act: () => void printSheet() },
  'station-book': { label: 'Station book…', act: askPaper },
  'save-pdf': { label: 'Save this sheet as PDF…', act: () => void savePdf() },
  undo: { label: 'Undo', act: undoStep },
  redo: { label: 'Redo', act: redoStep },
  steps: { label: 'Steps…', act: openSteps },
  duplicate: { label: 'Duplicate what is selected', act: duplicateSelection },
  delete: { label: 'Remove what is selected', act: removeSelection },
  'select-all': { label: 'Select all', act: selectAll },
  find: { label: 'Find…', act: openFind },
  'stage-draw': { label: 'Go to Draw', act: () => showStage('draw') },
  'stage-check': { label: 'Go to Check', act: () => showStage('check') },
  'stage-cables': { label: 'Go to Cables', act: () => showStage('cables') },
  'stage-budget': { label: 'Go to Budget', act: () => showStage('budget') },
  'stage-power-up': { label: 'Go to Power-up', act: () => showStage('power-up') },
  'zoom-to-fit': { label: 'Zoom to fit', act: () => drawingView.fit() },
  'zoom-to-selection': { label: 'Zoom to what is selected', act: () => drawingView.fitSelection() },
  'zoom-in': { label: 'Zoom in', act: () => drawingView.zoomIn() },
  'zoom-out': { label: 'Zoom out', act: () => drawingView.zoomOut() },
  tidy: { label: 'Tidy up the drawing', act: () => void drawingView.tidy() },
  'add-note': { label: 'Add a note', act: addNote },
  'add-zone': { label: 'Add a zone', act: addZone },
  'theme-light': { label: 'Light theme', act: () => chooseTheme('light') },
  'theme-dark': { label: 'Dark theme', act: () => chooseTheme('dark') },
  'theme-system': { label: 'Theme as the system', act: () => chooseTheme('system') },
  cautions: { label: 'Cautions', act: showCautions },
};

/** The actions that can be found by their names. */
export const namedActions = [
  ...Object.entries(actions)
    .filter(([command]) => command !== 'find')
    .map(([, action]) => action),
  { label: 'Show the station’s plan, hook-ups and limits', act: showStation },
  { label: 'Bring back unsaved work…', act: () => void showOffer() },
  { label: 'Keys and gestures', act: showKeys },
];

/** The details of the station itself, with the keyboard in their first field. */
function showStation() {
  showStage('draw');
  select({});
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.details input')?.focus());
}
/** What a dialog in front of the drawing keeps from it. */
const ofDrawing: ReadonlySet<ShellCommand> = new Set(['undo', 'redo', 'duplicate', 'delete', 'select-all']);

/** Does what a menu asks for; the same actions are behind the buttons and keys. */
export function obey(command: ShellCommand) {
  if (ofDrawing.has(command)) {
    if (document.querySelector('dialog[open]')) return;
  } else takeTyped();
  if (command.startsWith('sample:')) void openSample(command.slice('sample:'.length));
  else actions[command as Named]?.act();
}
