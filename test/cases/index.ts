import type { Correct, Trouble } from './case.ts';
import { rfTroubles } from './rf.ts';
import { supplyTroubles } from './supply.ts';

/** Real mistakes, each with the station put right. */
export const troubles: readonly Trouble[] = [...supplyTroubles, ...rfTroubles];

/** Stations that look odd and are right. */
export const correct: readonly Correct[] = [];
