/** Volts of 0 dBu: what 1 mW makes in 600 Ω. */
const dbuReferenceVolts = Math.sqrt(0.6);

/** Rms volts of a level in dBV (0 dBV = 1 V). */
export const voltsFromDbv = (dbv: number): number => 10 ** (dbv / 20);

/** Level in dBV of rms volts; zero gives -Infinity. */
export const dbvFromVolts = (volts: number): number => 20 * Math.log10(volts);

/** Rms volts of a level in dBu (0 dBu = √0.6 V = 0.7746 V): `voltsFromDbu(4)` is 1.2277. */
export const voltsFromDbu = (dbu: number): number => dbuReferenceVolts * 10 ** (dbu / 20);

/** Level in dBu of rms volts; zero gives -Infinity. */
export const dbuFromVolts = (volts: number): number => 20 * Math.log10(volts / dbuReferenceVolts);

/** Rms volts of a power in watts in a resistance in ohms, V = √(P R): 1 W in 8 Ω is 2.828 V. */
export const voltsFromWatts = (watts: number, ohms: number): number => Math.sqrt(watts * ohms);

/** Watts that rms volts make in a resistance in ohms. */
export const wattsFromVolts = (volts: number, ohms: number): number => volts ** 2 / ohms;

/**
 * Volts that arrive at a load, both impedances real and in ohms: V RL / (RS + RL). An open load (endless ohms) gets all,
 * a short none.
 *
 *     dividedVolts(1, 600, 600) // 0.5
 */
export const dividedVolts = (volts: number, sourceOhms: number, loadOhms: number): number =>
  loadOhms === 0 ? 0 : volts / (1 + sourceOhms / loadOhms);
