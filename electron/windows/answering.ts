import type { WebContents } from 'electron';
import { answeringChannel } from '../bridge/channels.ts';
import type { StationWindow } from './station-window.ts';

const limitMs = 5000;

/** Who waits for each screen's answer. */
const waiting = new Map<WebContents, Set<() => void>>();

/** Whether the window's screen still does anything: it has five seconds to say so. */
export function isAnswering({ frame }: StationWindow): Promise<boolean> {
  const contents = frame.webContents;
  return new Promise((resolve) => {
    const end = (answers: boolean) => {
      clearTimeout(timer);
      waiting.get(contents)?.delete(hear);
      resolve(answers);
    };
    const hear = () => end(true);
    const timer = setTimeout(() => end(false), limitMs);
    waiting.set(contents, (waiting.get(contents) ?? new Set()).add(hear));
    contents.send(answeringChannel);
  });
}

/** The screen has answered. */
export function hearAnswer(contents: WebContents): void {
  for (const hear of waiting.get(contents) ?? []) hear();
  waiting.delete(contents);
}
