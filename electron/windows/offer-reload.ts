import { dialog } from 'electron';
import type { StationWindow } from './station-window.ts';

/** A page that dies leaves an empty window behind. */
export function offerReload(window: StationWindow): void {
  window.frame.webContents.on('render-process-gone', (_event, { reason }) => {
    if (reason !== 'clean-exit') void ask(window);
  });
}

async function ask(window: StationWindow): Promise<void> {
  const { response } = await dialog.showMessageBox(window.frame, {
    type: 'error',
    message: 'This window has stopped working.',
    detail: 'Load it again to go on from the last state that was kept.',
    buttons: ['Load again', 'Close'],
    defaultId: 0,
    cancelId: 1,
  });
  if (response === 1) return window.frame.destroy();
  // The screen then asks anew for its document, and is given what was kept of it.
  window.frame.webContents.reload();
}
