import { suggestedName } from '../../shell/suggested-name.ts';
import { listsView, showTab } from '../../stages/cables/lists-view.ts';
import { powerUpStore } from '../../stages/power-up/power-up-store.ts';
import { currentStation } from '../../store/document.ts';
import { resultsStore } from '../../store/results.ts';
import { until } from '../../store/until.ts';
import { showStage, viewStore } from '../../store/view.ts';
import { tell } from '../dialogs/questions.ts';
import { takeTyped } from '../editing/take-typed.ts';

/** Prints the sheet of the stage shown; from a stage without one, the cable list. */
export async function printSheet() {
  const back = await showPrintable();
  const problem = window.stationwright ? await window.stationwright.print() : window.print();
  back();
  if (problem) await tell('Not printed', problem.error);
}

/** Writes the same sheet as a PDF; a browser does that from its print dialog. */
export async function savePdf() {
  if (!window.stationwright) return printSheet();
  const back = await showPrintable();
  const name = suggestedName(currentStation().title).replace('.station.json', `-${shownSheet()}.pdf`);
  const saved = await window.stationwright.savePdf({ suggestedName: name });
  back();
  if (saved && 'error' in saved) await tell('Not saved', saved.error);
}

/** Goes to a stage that has a sheet; gives the way back. */
async function showPrintable(): Promise<() => void> {
  takeTyped();
  const { stage } = viewStore.getState();
  const { tab } = listsView.getState();
  if (stage === 'draw') {
    showStage('cables');
    showTab('list');
  }
  // Just after an edit what is shown is of the drawing before it. In a moment it is of now, or says that it is old.
  await until(resultsStore, ({ is }) => is !== 'passing');
  if (stage === 'power-up') await until(powerUpStore, ({ sheet }) => sheet.is !== 'passing');
  // The sheet is painted in the next frame.
  await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
  return () => {
    showStage(stage);
    showTab(tab);
  };
}

/** A word for the sheet that is shown: the stage, or the list of its cables. */
function shownSheet(): string {
  const { stage } = viewStore.getState();
  const { tab } = listsView.getState();
  return stage === 'cables' && tab !== 'list' ? tab : stage;
}
