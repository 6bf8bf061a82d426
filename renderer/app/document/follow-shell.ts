import type { DesktopBridge, FirstDocument, OpenedFile } from '../../shell/bridge.ts';
import { entryOf } from '../../shell/kept/desktop-kept-work.ts';
import type { KeptWork } from '../../shell/kept/kept-work.ts';
import { currentStation, type DocumentFile, documentStore, isEdited } from '../../store/document.ts';
import { tell } from '../dialogs/questions.ts';
import { obey } from '../editing/commands.ts';
import { openDropped, openSample, showText } from './document-actions.ts';
import { judge, offerKept, restore } from './offer-kept.ts';

/** Ties the screen to the desktop shell: menu, files that arrive, title and edited mark, and what it had before. */
export async function followShell(bridge: DesktopBridge, work: KeptWork) {
  bridge.onCommand(obey);
  bridge.onOpened((file) => void openDropped({ ...fileOf(file), text: file.text }));
  bridge.onProblem((problem) => void tell('Not opened', problem.error));
  const report = () => {
    const state = documentStore.getState();
    const path = typeof state.file?.place === 'string' ? state.file.place : null;
    bridge.setDocumentState({ name: state.file?.name ?? currentStation().title, path, edited: isEdited(state) });
  };
  // Asked first: until it is answered, the shell goes by what the window had before a crash.
  const first = await bridge.firstDocument();
  documentStore.subscribe(report);
  report();
  await show(first, work);
  await offerKept(work, true);
}

async function show(first: FirstDocument, work: KeptWork) {
  if (first.kind === 'file') await showText(first.file.text, fileOf(first.file));
  else if (first.kind === 'sample') await openSample(first.sample);
  else if (first.kind === 'problem') await tell('Not opened', first.error);
  else if (first.kind === 'kept') {
    const entry = judge(entryOf(first.kept));
    // What can't be read stays kept, and the offer says so.
    if (entry.station) await restore(work, entry, entry.station);
  }
}

const fileOf = ({ name, path, stamp }: OpenedFile): DocumentFile => ({ name, place: path, stamp });

/** In a browser: the tab's title, and its question before closing with unsaved changes. */
export function followBrowser() {
  const report = () => {
    const state = documentStore.getState();
    document.title = `${isEdited(state) ? '• ' : ''}${state.history.station.title} – Stationwright`;
  };
  documentStore.subscribe(report);
  report();
  window.addEventListener('beforeunload', (event) => {
    if (isEdited(documentStore.getState())) event.preventDefault();
  });
}
