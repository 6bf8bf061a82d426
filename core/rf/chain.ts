import type { RfEdge, RfLoad } from '../circuit/circuit.ts';
import type { Complex } from '../quantity/complex.ts';
import type { MatchVerdict } from './match-of.ts';

/** What stands at a port on a source's way; watts and SWR in 50 Ω, as a directional meter there would show. */
export interface ChainPort {
  /** Index into `RfNet.ports`. */
  readonly port: number;
  /** Ohms looking away from the source. */
  readonly ohms: Complex;
  readonly swr: number;
  readonly forwardWatts: number;
  readonly reflectedWatts: number;
  /** Forward less reflected: what goes on from here. */
  readonly netWatts: number;
  readonly peakVolts: number;
}

/** One cable or element on the way. */
export interface ChainStep {
  readonly edge: RfEdge;
  readonly from: number;
  readonly to: number;
  /** From what goes in to what comes out, the loss by SWR included; negative for a gain. */
  readonly lossDb: number;
  /** The same if all were matched. */
  readonly matchedLossDb: number;
  /** The highest peak voltage anywhere on a line, if it is long enough to have a voltage maximum. */
  readonly peakVolts: number | null;
  /** Of a tuner: whether it brings its load to 50 Ω. */
  readonly match: MatchVerdict | null;
}

/** Where power ends. */
export interface ChainEnd {
  readonly load: RfLoad;
  readonly watts: number;
  readonly ohms: Complex;
  /** In what way its impedance is not known; see `loadOhms`. */
  readonly doubt: 'swr' | 'beyond' | null;
}

/** The way of one source's power, by selected paths, from its port to wherever it ends. */
export interface Chain {
  /** Index into `RfNet.sources`. */
  readonly source: number;
  readonly sourceWatts: number;
  /** In the order in which power comes to them; the source's own port first. */
  readonly ports: readonly ChainPort[];
  readonly steps: readonly ChainStep[];
  readonly ends: readonly ChainEnd[];
}
