import { createStore } from 'zustand/vanilla';
import type { PowerUpSheet, Station } from '../../../core/index.ts';
import type { CausesByStep } from '../../worker/power-up-messages.ts';

/** The newest sheet that was worked out, and what would cause the readings that are off. */
export interface PowerUpState {
  readonly sheet: PowerUpSheet | null;
  /** The document that it is of, whatever its readings. */
  readonly station: Station | null;
  readonly causes: CausesByStep;
  /** The readings that the causes are of. */
  readonly explained: string;
  readonly running: boolean;
  readonly problem: string | null;
  /** A round of readings that was begun by hand: since when, in the document opened as this. */
  readonly round: { readonly since: string; readonly opened: number } | null;
}

export const powerUpStore = createStore<PowerUpState>(() => ({
  sheet: null,
  station: null,
  causes: {},
  explained: '',
  running: false,
  problem: null,
  round: null,
}));
