import type { Complex } from '../quantity/complex.ts';
import { inputImpedance, type Line, lengthDegrees, matchedLossDb, swrAlong } from './line.ts';
import { totalLossDb } from './line-loss.ts';

/** What a line makes of its load; decibels of loss, ohms, degrees. */
export interface LineResult {
  /** Ohms that the near end shows. */
  readonly inputOhms: Complex;
  /** SWR in the line's own Z0 at either end. */
  readonly loadSwr: number;
  readonly inputSwr: number;
  readonly matchedLossDb: number;
  readonly totalLossDb: number;
  /** Total less matched loss: what the SWR adds. */
  readonly addedLossDb: number;
  readonly lengthDegrees: number;
}

/**
 * All that one length of line does to its load. An open or shorted end has an endless SWR and, on a line with loss, an
 * endless total loss: none of the power arrives.
 */
export function lineWithLosses(line: Line): LineResult {
  const matched = matchedLossDb(line);
  const total = totalLossDb(line);
  return {
    inputOhms: inputImpedance(line),
    loadSwr: swrAlong(line, 0),
    inputSwr: swrAlong(line, line.lengthM),
    matchedLossDb: matched,
    totalLossDb: total,
    addedLossDb: total - matched,
    lengthDegrees: lengthDegrees(line),
  };
}
