import { dbmFromWatts, wattsFromDbm } from '../quantity/decibel.ts';

/** A transmitter's fundamental: watts (mean power for part 97, peak envelope power for the ITU) and its frequency. */
export interface Carrier {
  readonly watts: number;
  readonly hertz: number;
}

/** The most that a spurious emission may be: `dbm` at the antenna line, `belowDb` under the carrier (positive). */
export interface SpuriousLimit {
  readonly dbm: number;
  readonly belowDb: number;
  readonly source: string;
}

const hfEndsHertz = 30e6;

/**
 * Limit of 47 CFR 97.307(d), below 30 MHz, and (e), 30 to 225 MHz. Below 30 MHz: 43 dB under the carrier; for equipment
 * installed on or before 1 January 2003 40 dB and 50 mW, under 5 W 30 dB. From 30 MHz: 60 dB; up to 25 W 40 dB and 25 µW,
 * but never less than 10 µW. Null above 225 MHz, where only (c) holds: as low as is practicable.
 *
 *     part97Limit({ watts: 5, hertz: 7e6 })?.dbm // -6.01
 */
export function part97Limit(carrier: Carrier, installedBy2003 = false): SpuriousLimit | null {
  const { watts, hertz } = carrier;
  if (hertz > 225e6) return null;
  if (hertz < hfEndsHertz)
    return limit(carrier, installedBy2003 ? oldHfWatts(watts) : watts / 10 ** 4.3, '47 CFR 97.307(d)');
  return limit(carrier, watts > 25 ? watts / 1e6 : Math.max(10e-6, Math.min(25e-6, watts / 1e4)), '47 CFR 97.307(e)');
}

const oldHfWatts = (watts: number): number => (watts < 5 ? watts / 1e3 : Math.min(50e-3, watts / 1e4));

/**
 * Limit of Recommendation ITU-R SM.329 category A for the amateur service: 43 + 10 log P under the peak envelope power,
 * or 50 dB below 30 MHz and 70 dB from there on, whichever asks for less. So -13 dBm up to 5 W on HF.
 *
 *     categoryALimit({ watts: 100, hertz: 14e6 }).belowDb // 50
 */
export function categoryALimit(carrier: Carrier): SpuriousLimit {
  const most = carrier.hertz < hfEndsHertz ? 50 : 70;
  const belowDb = Math.min(most, 43 + 10 * Math.log10(carrier.watts));
  return limit(carrier, carrier.watts / 10 ** (belowDb / 10), 'Recommendation ITU-R SM.329, category A');
}

function limit({ watts }: Carrier, spuriousWatts: number, source: string): SpuriousLimit {
  const dbm = dbmFromWatts(spuriousWatts);
  return { dbm, belowDb: dbmFromWatts(watts) - dbm, source };
}

export interface HarmonicVerdict {
  readonly dbm: number;
  readonly belowDb: number;
  /** Decibels between the harmonic and the limit; negative where it is too strong. */
  readonly marginDb: number;
  readonly within: boolean;
}

/**
 * A harmonic behind a filter against a limit. `harmonicDbc` is its level relative to the carrier before the filter
 * (negative), `rejectionDb` what the filter takes from it, `passDb` what it takes from the carrier. The limit is that of
 * the carrier behind the filter: `limitOf` is asked with it. Null where no limit applies, and where no carrier arrives.
 *
 *     judgeHarmonic({ watts: 10, hertz: 7e6 }, { harmonicDbc: -15, rejectionDb: 24 }, part97Limit)?.within // false: 39 dB
 */
export function judgeHarmonic(
  carrier: Carrier,
  { harmonicDbc, rejectionDb = 0, passDb = 0 }: { harmonicDbc: number; rejectionDb?: number; passDb?: number },
  limitOf: (carrier: Carrier) => SpuriousLimit | null,
): HarmonicVerdict | null {
  if (!(carrier.watts > 0)) return null;
  const outDbm = dbmFromWatts(carrier.watts) - passDb;
  const allowed = limitOf({ ...carrier, watts: wattsFromDbm(outDbm) });
  if (!allowed) return null;
  const dbm = dbmFromWatts(carrier.watts) + harmonicDbc - rejectionDb;
  const marginDb = allowed.dbm - dbm;
  // Exactly at the limit is within it, whatever the last digit of a logarithm says.
  return { dbm, belowDb: outDbm - dbm, marginDb, within: marginDb >= -1e-9 };
}
