import { contextBridge, type IpcRendererEvent, ipcRenderer } from 'electron';
import type { DesktopBridge } from '../renderer/shell/bridge.ts';
import { answeringChannel, type Call, type Message, stateChannel } from './bridge/channels.ts';

const ask = (call: Call, ...args: unknown[]) => ipcRenderer.invoke(call, ...args);

/** The listener gets the value alone: the event would hand the page a way to send on any channel. */
function listen<Value>(message: Message, listener: (value: Value) => void): () => void {
  const receive = (_event: IpcRendererEvent, value: Value) => listener(value);
  ipcRenderer.on(message, receive);
  return () => {
    ipcRenderer.off(message, receive);
  };
}

const bridge = {
  platform: process.platform,
  firstDocument: () => ask('firstDocument'),
  newWindow: () => ask('newWindow'),
  openFile: () => ask('openFile'),
  saveFile: (request) => ask('saveFile', request),
  lookAtFile: (file) => ask('lookAtFile', file),
  exportFile: (request) => ask('exportFile', request),
  listKept: (request) => ask('listKept', request),
  bringBack: (request) => ask('bringBack', request),
  throwAway: (request) => ask('throwAway', request),
  keepWork: (work) => ask('keepWork', work),
  forgetWork: () => ask('forgetWork'),
  print: () => ask('print'),
  savePdf: (request) => ask('savePdf', request),
  setDocumentState: (state) => ipcRenderer.send(stateChannel, state),
  onSaveToClose: (listener) => listen('saveToClose', listener),
  saveEnded: (end) => ask('saveEnded', end),
  onCommand: (listener) => listen('command', listener),
  onOpened: (listener) => listen('opened', listener),
  onProblem: (listener) => listen('problem', listener),
} satisfies DesktopBridge;

// Not for the page to do: this tells whether it can do anything at all.
ipcRenderer.on(answeringChannel, () => ipcRenderer.send(answeringChannel));

contextBridge.exposeInMainWorld('stationwright', bridge);
