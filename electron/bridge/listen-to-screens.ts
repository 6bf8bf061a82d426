import { type IpcMainEvent, type IpcMainInvokeEvent, ipcMain } from 'electron';
import { isOwnPage } from '../page.ts';
import { hearAnswer } from '../windows/answering.ts';
import { showDocumentState } from '../windows/document-state.ts';
import { type StationWindow, windowOf } from '../windows/station-window.ts';
import { answers } from './answers.ts';
import { answeringChannel, type Call, stateChannel } from './channels.ts';
import { documentState, requests } from './requests.ts';

/** Listens to the screens. Whatever is not our own page in a window of ours, or brings something else, is refused. */
export function listenToScreens(): void {
  for (const call of Object.keys(requests) as Call[]) listenFor(call);

  ipcMain.on(stateChannel, (event, report: unknown) => {
    const window = askingWindow(event);
    const state = documentState.safeParse(report);
    if (window && state.success) return showDocumentState(window, state.data);
    console.error(`${stateChannel}: refused`);
    // What can't be told apart from a change is asked about on closing, like one.
    if (window) window.document = { ...window.document, edited: true };
  });
  ipcMain.on(answeringChannel, (event) => hearAnswer(event.sender));
}

function listenFor<Name extends Call>(call: Name): void {
  ipcMain.handle(call, (event, ...args: unknown[]) => {
    const window = askingWindow(event);
    if (!window) throw new Error(`${call}: refused, asked by something else than the app's own page`);
    const request = requests[call].safeParse(args);
    if (!request.success) throw new TypeError(`${call}: refused, not what it takes: ${request.error.message}`);
    const answer = answers[call] as (window: StationWindow, ...args: unknown[]) => Promise<unknown>;
    return answer(window, ...request.data);
  });
}

function askingWindow({ sender, senderFrame }: IpcMainEvent | IpcMainInvokeEvent): StationWindow | null {
  return isOwnPage(senderFrame) ? windowOf(sender) : null;
}
