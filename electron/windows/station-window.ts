import { randomUUID } from 'node:crypto';
import { BrowserWindow, type WebContents } from 'electron';
import type { DocumentState, FirstDocument, NotDone, OpenedFile, ShellCommand } from '../../renderer/shell/bridge.ts';
import type { Message } from '../bridge/channels.ts';
import { isSameFile } from '../files/same-file.ts';

/** One window with one document, as far as the shell knows it. */
export interface StationWindow {
  readonly frame: BrowserWindow;
  /** What the window was opened for, until the screen has asked. */
  first: FirstDocument | null;
  /** As the screen reported it last. */
  document: DocumentState;
  /** Paths that the user chose in this window: only these are written to without a question. */
  readonly granted: Set<string>;
  /** Under which its unsaved work is kept outside its file. */
  keptId: string;
  /** How far a closing has come that the unsaved changes hold up; null if none does. */
  closing: 'asking' | 'saving' | null;
}

const windows = new Map<WebContents, StationWindow>();

export function keepWindow(frame: BrowserWindow, first: FirstDocument): StationWindow {
  const path = first.kind === 'file' ? first.file.path : null;
  const window: StationWindow = {
    frame,
    first,
    document: { name: '', path, edited: false },
    granted: new Set(path === null ? [] : [path]),
    keptId: randomUUID(),
    closing: null,
  };
  // Kept in a constant: a closed window has no contents any more to be found by.
  const contents = frame.webContents;
  windows.set(contents, window);
  frame.on('closed', () => {
    window.closing = null;
    windows.delete(contents);
  });
  return window;
}

export const allWindows = (): StationWindow[] => [...windows.values()];

export const windowOf = (contents: WebContents): StationWindow | null => windows.get(contents) ?? null;

/** The window that the user works in, or the one opened last if another program is in front. */
export function frontWindow(): StationWindow | null {
  const focused = BrowserWindow.getFocusedWindow();
  return (focused && windowOf(focused.webContents)) ?? allWindows().at(-1) ?? null;
}

/** The window that shows this file, by whatever name or link. */
export const windowShowing = (file: string): StationWindow | null =>
  allWindows().find(({ document }) => document.path !== null && isSameFile(document.path, file)) ?? null;

/** Nothing would be lost by showing another document here. */
export const isUntouched = ({ document }: StationWindow): boolean => document.path === null && !document.edited;

/** From here on the window stands for this file, before the screen has reported it. */
export function takeFile(window: StationWindow, file: string): void {
  window.granted.add(file);
  window.document = { ...window.document, path: file };
}

export function bringUp({ frame }: StationWindow): void {
  if (frame.isMinimized()) frame.restore();
  frame.focus();
}

export const sendCommand = (window: StationWindow, command: ShellCommand): void => send(window, 'command', command);
export const sendOpened = (window: StationWindow, file: OpenedFile): void => send(window, 'opened', file);
export const sendSaveToClose = (window: StationWindow): void => send(window, 'saveToClose', null);
export const sendProblem = (window: StationWindow, problem: NotDone): void => send(window, 'problem', problem);

function send({ frame }: StationWindow, message: Message, value: unknown): void {
  frame.webContents.send(message, value);
}
