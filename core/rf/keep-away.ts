import type { Plan } from '../station/schema/schema.ts';
import { averagedWatts, distanceToKeep } from './exposure.ts';
import { type ExposureTier, exposureLimit, nearFieldM } from './exposure-limits.ts';

/** Metres to keep from an antenna; null where no limit holds. */
export interface KeepAway {
  readonly averageWatts: number;
  /** Nearer than this the formula of the far field says little. */
  readonly nearFieldM: number;
  readonly controlled: number | null;
  readonly uncontrolled: number | null;
}

/** A half-wave dipole, where an antenna states no gain. */
const dipoleDbi = 2.15;

/**
 * How far to keep from an antenna that gets so many watts, by the plan's duty and share of sending, with common ground
 * under it (47 CFR 1.1310, OET Bulletin 65). A caution, not an assessment.
 */
export function keepAway(
  { duty, sendShare }: Plan,
  pepWatts: number,
  gainDbi: number | undefined,
  hertz: number,
): KeepAway {
  const averageWatts = averagedWatts({ pepWatts, lineLossDb: 0, duty, onShare: sendShare });
  const metres = (tier: ExposureTier) => {
    const limit = exposureLimit(hertz, tier);
    return limit && distanceToKeep({ averageWatts, gainDbi: gainDbi ?? dipoleDbi, ground: 'common' }, limit.mwPerCm2);
  };
  return {
    averageWatts,
    nearFieldM: nearFieldM(hertz),
    controlled: metres('controlled'),
    uncontrolled: metres('uncontrolled'),
  };
}
