/**
 * How strong the field of an antenna is and how far to keep from it: a caution that makes one think, never an
 * assessment. It defers to the rules of the country in which the station stands. The far-field formula says little
 * closer to a wire than a wavelength over 2π.
 */
export interface Radiated {
  /** Power into the antenna averaged as `averagedWatts` does. */
  readonly averageWatts: number;
  readonly gainDbi: number;
  readonly ground: Ground;
}

/** How much the ground adds: nothing, the 60 % of field of common ground (EPA), a mirror that doubles the field. */
export type Ground = 'none' | 'common' | 'mirror';

/** FCC OET Bulletin 65, edition 97-01, section 2: factors on power density. */
const groundFactors: Readonly<Record<Ground, number>> = { none: 1, common: 2.56, mirror: 4 };

/** P G k / 4π: the power density in W/m², a tenth of it in mW/cm², at one metre. */
const strength = ({ averageWatts, gainDbi, ground }: Radiated): number =>
  (averageWatts * 10 ** (gainDbi / 10) * groundFactors[ground]) / (4 * Math.PI);

/** Metres within which a power density in mW/cm² is exceeded: √(P G k / (4π S)); none where nothing is radiated. */
export const distanceToKeep = (radiated: Radiated, limitMwPerCm2: number): number =>
  Math.sqrt(Math.max(0, strength(radiated)) / (10 * limitMwPerCm2));

/**
 * Watts at the antenna averaged over the time that counts: peak envelope power less the line's loss, times the mode's
 * duty (0.4 keying, 0.2 speech, 1 a carrier: OET Bulletin 65 Supplement B) times the share of the time with the key on.
 */
export const averagedWatts = (how: { pepWatts: number; lineLossDb: number; duty: number; onShare: number }): number =>
  how.pepWatts * 10 ** (-how.lineLossDb / 10) * how.duty * how.onShare;
