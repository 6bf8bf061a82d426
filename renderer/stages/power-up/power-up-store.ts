import { createStore } from 'zustand/vanilla';
import type { PowerUpSheet } from '../../../core/index.ts';
import { type Computed, type ComputingFailure, ofAnyAge } from '../../store/computed.ts';
import type { CausesByStep } from '../../worker/power-up-messages.ts';

/** The newest sheet that was worked out, and what would cause the readings that are off. */
export interface PowerUpState {
  readonly sheet: Computed<PowerUpSheet>;
  /** The document opened as this is the one that the sheet is of. */
  readonly opened: number;
  readonly causes: CausesByStep;
  /** The readings that the causes are of. */
  readonly explained: string;
  /** Whether causes are being looked for. */
  readonly looking: boolean;
  /** Why the causes of those readings are not known. */
  readonly causesFailure: ComputingFailure | null;
  /** A round of readings that was begun by hand: since when, in the document opened as this. */
  readonly round: { readonly since: string; readonly opened: number } | null;
}

export const noCauses: Pick<PowerUpState, 'causes' | 'explained' | 'looking' | 'causesFailure'> = {
  causes: {},
  explained: '',
  looking: false,
  causesFailure: null,
};

export const powerUpStore = createStore<PowerUpState>(() => ({
  sheet: { is: 'computing' },
  opened: 0,
  ...noCauses,
  round: null,
}));

/** Shows a sheet of the document opened as this. What was said of readings was said of the one before. */
export function showPowerUp(sheet: Computed<PowerUpSheet>, opened: number) {
  const before = ofAnyAge(powerUpStore.getState().sheet);
  powerUpStore.setState({ sheet, opened, ...(ofAnyAge(sheet) === before ? {} : noCauses) });
}
