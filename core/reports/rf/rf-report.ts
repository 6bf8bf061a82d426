import type { KeepAway } from '../../rf/keep-away.ts';
import type { Place } from '../../station/place.ts';
import type { InHookup } from '../in-hookup.ts';

/** What stands at a port on a transmitter's way; watts and SWR in 50 Ω, ohms looking away from the transmitter. */
export interface RfStage {
  readonly port: string;
  /** The cable or unit through which the power came; empty for the transmitter's own port. */
  readonly by: string;
  /** Of what it came through, with what the SWR adds. */
  readonly lossDb: number;
  readonly matchedLossDb: number;
  /** Share by which cables of this type differ; null for units. */
  readonly tolerance: number | null;
  readonly forwardWatts: number;
  readonly reflectedWatts: number;
  readonly netWatts: number;
  readonly swr: number;
  readonly ohms: { readonly re: number; readonly im: number };
  readonly peakVolts: number;
  /** Of a tuner: whether it brings its load to 50 Ω. */
  readonly tuned: boolean | null;
}

/** A harmonic at an antenna; margins in dB below the limits, negative where it is too strong, null where none holds. */
export interface RfHarmonic {
  readonly order: number;
  readonly dbm: number;
  readonly part97MarginDb: number | null;
  readonly categoryAMarginDb: number | null;
}

/** Where a transmitter's power ends. */
export interface RfEnd {
  readonly name: string;
  readonly role: 'antenna' | 'termination' | 'receiver';
  readonly watts: number;
  readonly ohms: { readonly re: number; readonly im: number };
  /** `swr`: only the SWR is known; `beyond`: outside the antenna's table. */
  readonly doubt: 'swr' | 'beyond' | null;
  readonly harmonics: readonly RfHarmonic[];
  /** Metres to keep from an antenna on average: a caution that defers to the local rules. */
  readonly keepM: KeepAway | null;
}

/** One part on the way from a transmitter to where most of its power ends: a level, and what it lost to get there. */
export interface RfStair {
  readonly kind: 'transmitter' | 'mismatch' | 'cable' | 'unit' | 'end';
  readonly name: string;
  /** The cable or unit; null for what is neither. */
  readonly at: Place | null;
  /** From the level before to this one; negative for a gain. Zero for the first. */
  readonly lossDb: number;
  /** What goes on from here; minus infinity and 0 where nothing does. */
  readonly dbm: number;
  readonly watts: number;
}

/** The way of one transmitter's power while one control is pressed. */
export interface RfReport extends InHookup {
  readonly control: string;
  readonly controlName: string;
  readonly transmitter: string;
  readonly hertz: number;
  readonly watts: number;
  /** The most that it can be set to; null where its kind does not say. */
  readonly mostWatts: number | null;
  readonly stages: readonly RfStage[];
  readonly ends: readonly RfEnd[];
  /** The transmitter first, then cable by cable and unit by unit, the antenna or load last. */
  readonly staircase: readonly RfStair[];
}
