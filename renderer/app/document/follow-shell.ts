import type { DesktopBridge, FirstDocument, OpenedFile } from '../../shell/bridge.ts';
import { entryOf } from '../../shell/kept/desktop-kept-work.ts';
import type { KeptWork } from '../../shell/kept/kept-work.ts';
import type { OpenedDocument } from '../../shell/station-files.ts';
import { currentStation, documentStore, isEdited } from '../../store/document.ts';
import { isTyped, typedStore } from '../../store/typed.ts';
import { tell } from '../dialogs/questions.ts';
import { obey } from '../editing/commands.ts';
import { takeTyped } from '../editing/take-typed.ts';
import { lookAtFile, openDropped, openSample, save, showOpened } from './document-actions.ts';
import { judge, offerKept, restore } from './offer-kept.ts';

/** Ties the screen to the desktop shell: menu, files that arrive, title and edited mark, and what it had before. */
export async function followShell(bridge: DesktopBridge, work: KeptWork) {
  bridge.onCommand(obey);
  bridge.onSaveToClose(() => void saveToClose(bridge));
  bridge.onOpened((file) => void openDropped(asOpened(file)));
  bridge.onProblem((problem) => void tell('Not opened', problem.error));
  const report = () => {
    const state = documentStore.getState();
    const path = typeof state.file?.place === 'string' ? state.file.place : null;
    // What is in a field and no step yet would be lost with the window as well.
    const edited = isEdited(state) || isTyped();
    bridge.setDocumentState({ name: state.file?.name ?? currentStation().title, path, edited });
  };
  // Asked first: until it is answered, the shell goes by what the window had before a crash.
  const first = await bridge.firstDocument();
  documentStore.subscribe(report);
  typedStore.subscribe(report);
  report();
  await show(first, work);
  await offerKept(work, true);
}

async function saveToClose(bridge: DesktopBridge) {
  const saved = await save();
  await bridge.saveEnded({ saved });
  // The window stays then, and this says why.
  if (saved && isTyped())
    await tell(
      'Saved, but not closed',
      'Something that you have entered is not taken over yet. Take it over or cancel it, then close.',
    );
}

async function show(first: FirstDocument, work: KeptWork) {
  if (first.kind === 'file') await showOpened(asOpened(first.file));
  else if (first.kind === 'sample') await openSample(first.sample);
  else if (first.kind === 'problem') await tell('Not opened', first.error);
  else if (first.kind === 'kept') {
    const entry = judge(entryOf(first.kept));
    // What can't be read stays kept, and the offer says so.
    if (entry.station) await restore(work, entry, entry.station);
  }
}

const asOpened = ({ name, path, text, stamp }: OpenedFile): OpenedDocument => ({ name, place: path, text, stamp });

/** Whether somebody else has changed the file is looked at whenever the user comes back to this window. */
export function followFile() {
  window.addEventListener('focus', () => void lookAtFile());
}

/** In a browser: the tab's title, and its question before closing with unsaved changes. */
export function followBrowser() {
  const report = () => {
    const state = documentStore.getState();
    document.title = `${isEdited(state) ? '• ' : ''}${state.history.station.title} – Stationwright`;
  };
  documentStore.subscribe(report);
  report();
  window.addEventListener('beforeunload', (event) => {
    takeTyped();
    if (isEdited(documentStore.getState()) || isTyped()) event.preventDefault();
  });
}
