import type { Place } from '../station/place.ts';

/** One thing that may fail, in one hook-up. */
export interface Failure {
  /** Names it in every hook-up: `open:cable D4.live`. */
  readonly id: string;
  readonly kind: 'opens' | 'losesPower' | 'staysOn' | 'staysOff' | 'highVolts';
  /** What happens, as it begins a sentence: `Minus of D4 opens`. */
  readonly text: string;
  readonly at: Place;
  /** Parts of the circuit that are taken out. */
  readonly parts: readonly number[];
  /** Parts in a row with the one that is taken out: any of them failing comes to the same. */
  readonly alike: readonly number[];
  /** Actors that are held, and where. */
  readonly held: ReadonlyMap<number, boolean>;
  /** Supplies (parts) that go to another voltage. */
  readonly volts: ReadonlyMap<number, number>;
}
