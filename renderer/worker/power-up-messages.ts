import type { Cause, PowerUpSheet, Station, StepReading } from '../../core/index.ts';
import type { Thread } from './watched-thread.ts';

/** What a power-up worker is asked: the sheet of a station, or what would cause readings of it that are off. */
export type PowerUpRequest =
  | { readonly wants: 'sheet'; readonly station: Station }
  | {
      readonly wants: 'causes';
      readonly station: Station;
      readonly off: readonly StepReading[];
      readonly all: readonly StepReading[];
    };

/** Causes by step. */
export type CausesByStep = Readonly<Record<string, readonly Cause[]>>;

export type PowerUpAnswer = { readonly sheet: PowerUpSheet } | { readonly causes: CausesByStep };

export type PowerUpThread = Thread<PowerUpRequest, PowerUpAnswer>;
