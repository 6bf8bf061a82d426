import { createStore } from 'zustand/vanilla';
import type { PowerUpSheet } from '../../../core/index.ts';
import type { Computed } from '../../store/computed.ts';
import type { MixUpResult } from '../../store/studies.ts';

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
  'mix-ups',
  'typical',
  'cautions',
] as const;
export type PartId = (typeof partIds)[number];

/** What is to be put on paper. */
export interface BookRequest {
  readonly parts: readonly PartId[];
  readonly paper: PaperSize;
}

/** The same with what was worked out for it. */
export interface PreparedBook extends BookRequest {
  /** Null where the book has no power-up sheet. */
  readonly powerUp: Computed<PowerUpSheet> | null;
  /** Null where the book says nothing of mix-ups, or the station is too large to try them for it. */
  readonly mixUps: Computed<MixUpResult> | null;
}

interface BookState {
  /** The dialog that asks what to print. */
  readonly asking: boolean;
  /** Set while the book is on the page, to be printed. */
  readonly printing: PreparedBook | null;
}

export const bookStore = createStore<BookState>(() => ({ asking: false, printing: null }));

const { setState } = bookStore;

export const askPaper = () => setState({ asking: true });
export const closePaper = () => setState({ asking: false });
export const setPrinting = (printing: PreparedBook | null) => setState({ printing });
