import { plural, readStation } from '../../../core/index.ts';
import { filesHere } from '../../shell/files-here.ts';
import type { OpenedDocument } from '../../shell/station-files.ts';
import { currentStation, type DocumentFile, documentStore, isEdited, openDocument } from '../../store/document.ts';
import { resetView, showStage } from '../../store/view.ts';
import { ask, tell } from '../dialogs/questions.ts';
import { takeTyped } from '../editing/take-typed.ts';
import { createSaving } from './create-saving.ts';
import { sampleText } from './samples.ts';
import { tellRemarks, tellUnsaveable } from './tell-problems.ts';

/** An empty sheet, once the user has decided about unsaved changes. On the desktop it is a further window. */
export async function newStation() {
  if (window.stationwright) await window.stationwright.newWindow();
  else if (await mayReplace()) {
    openDocument();
    resetView();
    showStage('draw');
  }
}

/** Asks for a file and shows it. */
export async function openFile() {
  // The desktop shell opens another window where this one has a document; only the browser replaces it.
  if (!window.stationwright && !(await mayReplace())) return;
  const opened = await filesHere.open();
  if (opened && 'error' in opened) await tell('Not opened', opened.error);
  else if (opened) await showOpened(opened);
}

/** Shows a file that came by itself: dropped on the window, or from the desktop shell. */
export async function openDropped(opened: OpenedDocument) {
  if (await mayReplace()) await showOpened(opened);
}

/** Shows a file's text as the document. */
export const showOpened = ({ text, ...file }: OpenedDocument): Promise<void> => showText(text, file);

/** Shows a sample: a new document, as samples are not written to. */
export async function openSample(id: string) {
  const text = await sampleText(id);
  if (text === null) await tell('Not opened', `There is no sample called “${id}”.`);
  else if (await mayReplace()) await showText(text, null);
}

/** Shows the text as the document, or every problem that it has; then the document that is open stays. */
export async function showText(text: string, file: DocumentFile | null) {
  const result = readStation(text);
  if ('station' in result) {
    openDocument(result.station, file);
    resetView();
    await tellRemarks(result.remarks);
    return;
  }
  const count = result.problems.length;
  const text_ = `${plural(count, 'One thing keeps', `${count} things keep`)} it from being opened. The station on the screen is still there.`;
  await tell(`${file?.name ?? 'The file'} could not be read`, text_, { problems: result.problems });
}

const saving = createSaving(filesHere, tellUnsaveable);

/** Writes the document, with what is being typed; true when it is in its file. */
export function save(askWhere = false): Promise<boolean> {
  takeTyped();
  return saving.save(askWhere);
}

/** Looks whether somebody else has changed the file, as the window comes to the front. */
export const lookAtFile = saving.look;

/** Whether another document may take this one's place. */
export async function mayReplace(): Promise<boolean> {
  takeTyped();
  if (!isEdited(documentStore.getState())) return true;
  const choice = await ask({
    title: 'Save the changes first?',
    text: `“${currentStation().title}” has changes that are not in a file yet.`,
    choices: [
      { id: 'stay', label: 'Cancel' },
      { id: 'discard', label: 'Discard changes' },
      { id: 'save', label: 'Save' },
    ],
  });
  if (choice === 'save') return save();
  return choice === 'discard';
}
