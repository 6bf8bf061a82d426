/**
 * What the desktop shell offers the screen as `window.stationwright`; in a plain browser it is not there.
 * The one place where renderer and electron meet, and only in types.
 *
 * A call never rejects for something a user can meet: it answers with a `NotDone`, whose sentence can be shown
 * as it is. `null` means that nothing is left to do (the user cancelled, or another window shows the document).
 */
export interface DesktopBridge {
  /** `process.platform` of the shell: 'darwin', 'win32', 'linux', ... */
  readonly platform: string;

  /**
   * What this window was opened for; ask once, after the listeners below are set.
   * Documents that come later (menu, double-click, second start) arrive by `onOpened` and `onCommand`.
   */
  firstDocument(): Promise<FirstDocument>;

  /** Opens a further window with an empty station. */
  newWindow(): Promise<null>;

  /**
   * Asks for a file. One window a file: if this window's document has a path or is edited, or another window
   * shows the file already, that other window comes up and the answer here is `null`.
   */
  openFile(): Promise<OpenedFile | NotDone | null>;

  /**
   * Writes the whole text or nothing: a failed save leaves the old file as it was. Asks for a place if `path`
   * is null, or is not a path that this window was given by opening or saving. Writes nothing over a file that
   * somebody else has changed since: the answer then says what is in it.
   */
  saveFile(request: SaveRequest): Promise<SavedFile | FileChanged | NotDone | null>;

  /** Whether somebody else has written to this window's file since; null if not. */
  lookAtFile(file: { readonly path: string; readonly stamp: FileStamp }): Promise<FileChanged | null>;

  /** Asks for a place and writes a table, picture or kind there. Not the document: `saveFile` is for that. */
  exportFile(request: ExportRequest): Promise<SavedFile | NotDone | null>;

  /** Unsaved work that no window has open, the newest first; `unasked` leaves out what was listed so in this run. */
  listKept(request: { readonly unasked: boolean }): Promise<readonly KeptDocument[]>;

  /**
   * Lets this window have unsaved work, with the path of its file, if it shows nothing else or that file unchanged;
   * else opens a window for it, whose first document it is.
   */
  bringBack(kept: { readonly id: string }): Promise<Brought | NotDone>;

  throwAway(kept: { readonly id: string }): Promise<NotDone | null>;

  /** Keeps this window's document outside its file, in place of what was kept of it before: all of it, or the older stays. */
  keepWork(work: UnsavedWork): Promise<NotDone | null>;

  /** This window's document is in its file, or not wanted: nothing of it is kept. */
  forgetWork(): Promise<NotDone | null>;

  /** Sends the page as it prints now (print stylesheet) to the system's print dialog. */
  print(): Promise<NotDone | null>;

  /** Asks for a place and writes the page as it prints now there. Page size and margins come from `@page`. */
  savePdf(request: { readonly suggestedName: string }): Promise<SavedFile | NotDone | null>;

  /**
   * Keeps title, edited mark and the question on closing in step with the document. Report every change of it,
   * and `edited: false` after a save.
   */
  setDocumentState(state: DocumentState): void;

  /** The user closes the window and wants its changes saved: save, then say `saveEnded`, whatever came of it. */
  onSaveToClose(listener: () => void): () => void;

  /** The window closes if its document was saved and has no changes since; else it stays. */
  saveEnded(end: { readonly saved: boolean }): Promise<null>;

  /** Menu choices. Returns a function that ends the listening. */
  onCommand(listener: (command: ShellCommand) => void): () => void;

  /** A file to show in this window in place of its untouched document. Returns a function that ends the listening. */
  onOpened(listener: (file: OpenedFile) => void): () => void;

  /** A sentence to show: a file named on the command line or in the menu could not be read. */
  onProblem(listener: (problem: NotDone) => void): () => void;
}

/** What a file looked like when it was read or written last; another stamp later means that somebody wrote to it. */
export interface FileStamp {
  readonly modifiedMs: number;
  readonly size: number;
  /** 0 where there is none: in a browser. */
  readonly inode: number;
}

export interface OpenedFile {
  readonly path: string;
  /** File name with its ending, for titles. */
  readonly name: string;
  readonly text: string;
  readonly stamp: FileStamp;
}

export interface SavedFile {
  readonly path: string;
  readonly name: string;
  readonly stamp: FileStamp;
}

/** Somebody else has written to a file, or taken it away. */
export interface FileChanged {
  /** What it looks like now; null where it is gone. */
  readonly changed: FileStamp | null;
  /** What is in it; null where it is gone, or holds no text. */
  readonly text: string | null;
}

/** A sentence for the user, complete with what to do about it where something can be done. */
export interface NotDone {
  readonly error: string;
}

/** A document with changes that are not in its file. */
export interface UnsavedWork {
  readonly text: string;
  readonly about: AboutUnsaved;
}

/** What is known of it without reading the text. */
export interface AboutUnsaved {
  readonly title: string;
  readonly units: number;
  readonly cables: number;
  /** Its file, if it has one, and what that looked like when it was opened or saved last. */
  readonly path: string | null;
  readonly stamp: FileStamp | null;
}

/** Unsaved work as it was kept. */
export interface KeptDocument {
  readonly id: string;
  /** Milliseconds since 1970. */
  readonly keptAt: number;
  /** Null where it is damaged; the text then is all that there is. */
  readonly about: AboutUnsaved | null;
  readonly text: string;
  /** Whether the file has another stamp by now. */
  readonly fileChanged: boolean;
}

/** Where unsaved work came back: in the window that asked, or in another that was opened for it. */
export type Brought = 'here' | 'elsewhere';

/** `welcome` is a start without a file: the screen decides (first-start sample, empty station). */
export type FirstDocument =
  | { readonly kind: 'welcome' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'sample'; readonly sample: string }
  | { readonly kind: 'file'; readonly file: OpenedFile }
  /** To be brought back without a question: the window's own, or one that another window sent here. */
  | { readonly kind: 'kept'; readonly kept: KeptDocument }
  | { readonly kind: 'problem'; readonly error: string };

export interface SaveRequest {
  readonly text: string;
  readonly path: string | null;
  /** What the file at `path` looked like last; null to write whatever is there. */
  readonly stamp: FileStamp | null;
  readonly suggestedName: string;
}

export interface ExportRequest {
  readonly suggestedName: string;
  readonly content: string;
  /** `base64` for pictures. */
  readonly encoding: 'utf8' | 'base64';
}

export interface DocumentState {
  readonly name: string;
  readonly path: string | null;
  /** There is something to lose: changes that are not in the file, or text in a field that is no step yet. */
  readonly edited: boolean;
}

/**
 * What the menu asks of the screen. Cut, copy and paste are not here: the menu's own roles raise the DOM events
 * `cut`, `copy` and `paste`, which serve text fields and the drawing alike. The others come whatever has the focus:
 * undo and select-all are the text field's own if one has it. `sample:NAME` is `NAME.station.json`.
 */
export type ShellCommand =
  | `sample:${string}`
  | 'save'
  | 'save-as'
  | 'print'
  | 'station-book'
  | 'save-pdf'
  | 'undo'
  | 'redo'
  | 'steps'
  | 'duplicate'
  | 'delete'
  | 'select-all'
  | 'find'
  | 'stage-draw'
  | 'stage-check'
  | 'stage-cables'
  | 'stage-budget'
  | 'stage-power-up'
  | 'zoom-to-fit'
  | 'zoom-to-selection'
  | 'zoom-in'
  | 'zoom-out'
  | 'tidy'
  | 'add-note'
  | 'add-zone'
  | 'theme-light'
  | 'theme-dark'
  | 'theme-system'
  | 'cautions';

declare global {
  interface Window {
    readonly stationwright?: DesktopBridge;
  }
}
