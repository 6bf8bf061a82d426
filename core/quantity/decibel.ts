/** Power in watts of a level in dBm (0 dBm = 1 mW). */
export function wattsFromDbm(dbm: number): number {
  return 10 ** ((dbm - 30) / 10);
}

/** Level in dBm of a power in watts; zero or less gives -Infinity. */
export function dbmFromWatts(watts: number): number {
  return watts > 0 ? 10 * Math.log10(watts) + 30 : Number.NEGATIVE_INFINITY;
}
