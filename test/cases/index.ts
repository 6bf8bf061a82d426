import type { Correct, Trouble } from './case.ts';
import { correctStations } from './correct.ts';
import { keyingTroubles } from './keying.ts';
import { moreTroubles } from './more.ts';
import { rfTroubles } from './rf.ts';
import { otherTroubles } from './sound.ts';
import { supplyTroubles } from './supply.ts';

/** Real mistakes, each with the station put right. */
export const troubles: readonly Trouble[] = [
  ...supplyTroubles,
  ...rfTroubles,
  ...keyingTroubles,
  ...otherTroubles,
  ...moreTroubles,
];

/** Stations that look odd and are right. */
export const correct: readonly Correct[] = correctStations;
