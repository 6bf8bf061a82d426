import type { DesktopBridge } from '../../shell/bridge.ts';
import { currentStation, documentStore, isEdited } from '../../store/document.ts';
import { tell } from '../dialogs/questions.ts';
import { obey } from '../editing/commands.ts';
import { openDropped, openSample, showText } from './document-actions.ts';

/** Ties the screen to the desktop shell: menu, files that arrive, title and edited mark. */
export async function followShell(bridge: DesktopBridge) {
  bridge.onCommand(obey);
  bridge.onOpened((file) => void openDropped({ name: file.name, place: file.path, text: file.text }));
  bridge.onProblem((problem) => void tell('Not opened', problem.error));
  const report = () => {
    const state = documentStore.getState();
    const path = typeof state.file?.place === 'string' ? state.file.place : null;
    bridge.setDocumentState({ name: state.file?.name ?? currentStation().title, path, edited: isEdited(state) });
  };
  documentStore.subscribe(report);
  report();
  const first = await bridge.firstDocument();
  if (first.kind === 'file') await showText(first.file.text, { name: first.file.name, place: first.file.path });
  else if (first.kind === 'sample') await openSample(first.sample);
  else if (first.kind === 'problem') await tell('Not opened', first.error);
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
    if (isEdited(documentStore.getState())) event.preventDefault();
  });
}
