import { createStore } from 'zustand/vanilla';
import type { PartId } from './parts.tsx';

export type PaperSize = 'a4' | 'letter';

/** What is being put on paper. */
export interface BookRequest {
  readonly parts: readonly PartId[];
  readonly paper: PaperSize;
}

interface BookState {
  /** The dialog that asks what to print. */
  readonly asking: boolean;
  /** Set while the book is on the page, to be printed. */
  readonly printing: BookRequest | null;
}

export const bookStore = createStore<BookState>(() => ({ asking: false, printing: null }));

const { setState } = bookStore;

export const askPaper = () => setState({ asking: true });
export const closePaper = () => setState({ asking: false });
export const setPrinting = (printing: BookRequest | null) => setState({ printing });
