/** A matched attenuator: what comes out and what it turns into heat, in watts. */
export interface PadPower {
  readonly outWatts: number;
  readonly heatWatts: number;
}

/**
 * Watts behind a matched pad and heat in it: the heat is Pin (1 - 10^(-N/10)). Any matched loss is such a pad.
 *
 *     padPower(5, 10) // { outWatts: 0.5, heatWatts: 4.5 }
 */
export function padPower(inWatts: number, padDb: number): PadPower {
  const outWatts = inWatts * 10 ** (-padDb / 10);
  return { outWatts, heatWatts: inWatts - outWatts };
}

/** Return loss in dB that is seen through a pad: both ways count, so twice the pad is added to that of the load. */
export const padReturnLossDb = (loadReturnLossDb: number, padDb: number): number => loadReturnLossDb + 2 * padDb;

/**
 * The pad in dB that brings a source down to what an input takes, and its heat with the source at full power; 0 dB
 * where none is needed.
 *
 *     padForInput(100, 10) // { padDb: 10, heatWatts: 90 }
 */
export function padForInput(sourceWatts: number, inputMaxWatts: number): { padDb: number; heatWatts: number } {
  if (sourceWatts <= inputMaxWatts) return { padDb: 0, heatWatts: 0 };
  return { padDb: 10 * Math.log10(sourceWatts / inputMaxWatts), heatWatts: sourceWatts - inputMaxWatts };
}
