import { askToEnd } from '../files/dialogs.ts';
import type { StationWindow } from './station-window.ts';

/** A screen that has stopped answering is told about, with a way out; the question goes when the screen comes back. */
export function tellWhenSilent(window: StationWindow): void {
  let asking: AbortController | null = null;
  window.frame.on('unresponsive', async () => {
    // On closing there is a question of its own.
    if (asking || window.closing !== null) return;
    asking = new AbortController();
    const answer = await askToEnd(window.frame, asking.signal);
    const cameBack = asking.signal.aborted;
    asking = null;
    // What then is offered for a page that has died is offered here too.
    if (answer === 'end' && !cameBack) window.frame.webContents.forcefullyCrashRenderer();
  });
  window.frame.on('responsive', () => asking?.abort());
}
