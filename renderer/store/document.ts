import { createStore } from 'zustand/vanilla';
import {
  type Change,
  createStation,
  goTo,
  type History,
  recordChange,
  redo,
  replaceStation,
  type Station,
  startHistory,
  undo,
} from '../../core/index.ts';
import type { FileStamp } from '../shell/bridge.ts';

/** Where a document is kept: its name, and a path (desktop) or a handle (browser) to write it back to. */
export interface DocumentFile {
  readonly name: string;
  readonly place: unknown;
  /** What it looked like when it was read or written last, where that can be told. */
  readonly stamp?: FileStamp;
}

export interface OpenDocument {
  readonly history: History;
  /** The document as it is in its file; steps keep whole documents, so undoing back to it makes it “saved” again. */
  readonly saved: Station;
  readonly file: DocumentFile | null;
  /** Goes up with every document opened, so that the drawing knows when to fit it in view. */
  readonly opened: number;
}

const fresh = (station: Station, file: DocumentFile | null, opened: number): OpenDocument => ({
  history: startHistory(station),
  saved: station,
  file,
  opened,
});

export const documentStore = createStore<OpenDocument>(() => fresh(createStation(), null, 0));

const { getState, setState } = documentStore;

export const isEdited = (state: OpenDocument): boolean => state.history.station !== state.saved;

export const currentStation = (): Station => getState().history.station;

/** Makes a change as one step that can be undone. */
export function change(what: Change) {
  setState({ history: recordChange(getState().history, what) });
}

export const undoStep = () => setState({ history: undo(getState().history) });

export const redoStep = () => setState({ history: redo(getState().history) });

/** Undoes or redoes until this many steps are done; 0 is the document as it was opened. */
export const goToStep = (done: number) => setState({ history: goTo(getState().history, done) });

/** Shows another document in place of this one; without a station, an empty one. */
export function openDocument(station: Station = createStation(), file: DocumentFile | null = null) {
  setState(fresh(station, file, getState().opened + 1));
}

/** Shows a document whose changes are not in its file: work that was brought back. */
export function restoreDocument(station: Station, file: DocumentFile | null) {
  setState({ ...fresh(station, file, getState().opened + 1), saved: createStation() });
}

/** What somebody else has put into the file takes this document's place, as a step that can be undone. */
export function reloadDocument(station: Station, file: DocumentFile) {
  setState({
    history: replaceStation(getState().history, station, `Load what is in ${file.name}`),
    saved: station,
    file,
  });
}

/** The file looks otherwise now than it did, but the document in it is the same. */
export function markSeen(file: DocumentFile) {
  setState({ file });
}

/** The file has another document now, or none, and this one stays: it is unsaved whatever is undone. */
export function markApart(file: DocumentFile, inFile: Station = createStation()) {
  setState({ file, saved: inFile });
}

/** The document, as it was when writing began, is now in this file. */
export function markSaved(station: Station, file: DocumentFile) {
  setState({ saved: station, file });
}
