import type { Change } from '../../station/edit.ts';
import type { Place } from '../../station/place.ts';

/**
 * What a hand does: a plug goes into another jack; two plugs are exchanged; a lead is turned end for end; a lead's two
 * cores are crossed; two leads of one look are taken for each other; a switch is left in another position.
 */
export type ActKind = 'moved' | 'exchanged' | 'turned' | 'crossed' | 'mistaken' | 'switched';

/** One thing that a hand does to a station. */
export interface Act {
  /** The same for the same act on the same drawing: `moved d4.b receiver.antenna`. */
  readonly id: string;
  readonly kind: ActKind;
  /** Ids of the cables that it moves; none for a switch. */
  readonly cables: readonly string[];
  /** Where the drawing has it, or had it, and where it goes. */
  readonly at: readonly [Place, ...Place[]];
  readonly change: Change;
  /** What it comes to, as it begins a sentence: `D4 in Receiver · antenna instead of Receiver · power`. */
  readonly words: string;
}
