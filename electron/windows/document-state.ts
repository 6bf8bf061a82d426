import type { DocumentState } from '../../renderer/shell/bridge.ts';
import type { StationWindow } from './station-window.ts';

const longestTitle = 200;

/** Takes over what the screen reports, and shows it in the title as each system does. */
export function showDocumentState(window: StationWindow, state: DocumentState): void {
  // A path that the user did not choose in this window is not this window's file.
  const path = state.path !== null && window.granted.has(state.path) ? state.path : null;
  window.document = { ...state, path };
  window.frame.setTitle(windowTitle(state));
  window.frame.setDocumentEdited(state.edited);
  window.frame.setRepresentedFilename(path ?? '');
}

/** macOS marks an edited document in the window's close button; the others have only the title for it. */
export function windowTitle({ name, edited }: DocumentState): string {
  const mark = edited && process.platform !== 'darwin' ? '• ' : '';
  return name ? `${mark}${cut(name)} - Stationwright` : 'Stationwright';
}

/** A title has no end that a user could make use of; the bars of windows and of the system have one. */
function cut(name: string): string {
  const letters = [...name];
  return letters.length > longestTitle ? `${letters.slice(0, longestTitle).join('')}…` : name;
}
