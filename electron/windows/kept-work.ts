import { app } from 'electron';
import type { NotDone, UnsavedWork } from '../../renderer/shell/bridge.ts';
import { inTurn } from '../files/in-turn.ts';
import { keptPath, removeKeptFile, writeKeptFile } from '../files/kept-files.ts';
import { plainReason } from '../files/plain-reason.ts';
import type { StationWindow } from './station-window.ts';

/** What is still on its way to the disk. */
const pending = new Set<Promise<unknown>>();

/** Keeps a window's document in place of what was kept of it before. */
export function keepWork({ keptId, granted }: StationWindow, { text, about }: UnsavedWork): Promise<NotDone | null> {
  // A path that the user did not choose in this window would be written to later without a question.
  const file = about.path !== null && granted.has(about.path) ? about.path : null;
  const work = { text, about: { ...about, path: file } };
  return attempt(keptId, () => writeKeptFile(keptId, work), 'Unsaved work could not be kept');
}

/** A window's document is in its file, or not wanted. */
export const forgetWork = ({ keptId }: StationWindow): Promise<NotDone | null> => removeKept(keptId);

export const removeKept = (id: string): Promise<NotDone | null> =>
  attempt(id, () => removeKeptFile(id), 'What was kept could not be thrown away');

/** A window that closes with nothing to lose, or as its user wants it, leaves nothing behind; one that dies does. */
export function forgetOnClose(window: StationWindow): void {
  window.frame.on('closed', () => {
    if (!window.document.edited) void forgetWork(window);
  });
}

/** The program does not end over a keeping or forgetting that is under way. */
export function settleBeforeQuit(): void {
  app.on('will-quit', (event) => {
    if (pending.size === 0) return;
    event.preventDefault();
    void Promise.allSettled(pending).then(() => app.quit());
  });
}

async function attempt(id: string, act: () => Promise<void>, sentence: string): Promise<NotDone | null> {
  const done = inTurn(keptPath(id), act);
  pending.add(done);
  try {
    await done;
    return null;
  } catch (error) {
    return { error: `${sentence}: ${plainReason(error)}.` };
  } finally {
    pending.delete(done);
  }
}
