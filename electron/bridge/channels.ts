import type { DesktopBridge } from '../../renderer/shell/bridge.ts';

/** What the screen asks of the shell and waits for: the bridge's functions that answer with a promise. */
export type Call = {
  [Name in keyof DesktopBridge]: DesktopBridge[Name] extends (...args: never[]) => Promise<unknown> ? Name : never;
}[keyof DesktopBridge];

/** What the shell sends unasked, each for one listener of the bridge. */
export type Message = 'command' | 'opened' | 'problem' | 'saveToClose';

/** Calls go by the name of the bridge's function; the one report without an answer goes by this. */
export const stateChannel = 'documentState';

/** The shell asks whether a screen still does anything, and gets the same back from one that does. */
export const answeringChannel = 'answering';
