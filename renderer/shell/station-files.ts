import type { DocumentFile } from '../store/document.ts';
import type { FileChanged, NotDone } from './bridge.ts';

export interface OpenedDocument extends DocumentFile {
  readonly text: string;
}

interface SaveWish {
  readonly text: string;
  /** Where it was saved or opened last. */
  readonly file: DocumentFile | null;
  readonly suggestedName: string;
  readonly askWhere: boolean;
}

/** Opening and saving, wherever the screen runs. `null` is a question that the user cancelled. */
export interface StationFiles {
  open(): Promise<OpenedDocument | NotDone | null>;
  /** Writes nothing over a file that somebody else has changed since `file.stamp`. */
  save(wish: SaveWish): Promise<DocumentFile | FileChanged | NotDone | null>;
  /** Whether somebody else has changed the file since its stamp; null if not, or if nobody can tell. */
  look(file: DocumentFile): Promise<FileChanged | null>;
}
