import type { DocumentFile } from '../store/document.ts';
import type { Problem } from './bridge.ts';

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
  open(): Promise<OpenedDocument | Problem | null>;
  save(wish: SaveWish): Promise<DocumentFile | Problem | null>;
}
