import { createStore } from 'zustand/vanilla';

export type PaperSize = 'a4' | 'letter';

/** The parts of a station book in their order; each can be printed alone. */
export const partIds = [
  'drawing',
  'units',
  'cables',
  'make',
  'buy',
  'budget',
  'power-up',
  'findings',
  'typical',
  'cautions',
] as const;
export type PartId = (typeof partIds)[number];

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
