import type { Cause, PowerUpSheet, Station, StepReading } from '../../core/index.ts';

/** What the power-up worker is asked: the sheet of a station, or what would cause the readings of that sheet that are off. */
export type PowerUpRequest =
  | { readonly wants: 'sheet'; readonly station: Station }
  | { readonly wants: 'causes'; readonly off: readonly StepReading[]; readonly all: readonly StepReading[] };

/** Causes by step. */
export type CausesByStep = Readonly<Record<string, readonly Cause[]>>;

export type PowerUpAnswer =
  | { readonly sheet: PowerUpSheet }
  | { readonly causes: CausesByStep }
  | { readonly problem: string };

/** What the runner needs of a Worker. */
export interface PowerUpWorker {
  postMessage(request: PowerUpRequest): void;
  terminate(): void;
  onmessage: ((event: { data: PowerUpAnswer }) => void) | null;
  onerror: ((event: { message: string; preventDefault(): void }) => void) | null;
}
