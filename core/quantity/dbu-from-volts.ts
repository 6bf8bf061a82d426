/** Volts of 0 dBu: what 1 mW makes in 600 Ω. */
const dbuReferenceVolts = Math.sqrt(0.6);

/** Level in dBu of rms volts (0 dBu = √0.6 V = 0.7746 V): `dbuFromVolts(1.2277)` is 4; zero gives -Infinity. */
export const dbuFromVolts = (volts: number): number => 20 * Math.log10(volts / dbuReferenceVolts);
