import type { Change } from '../../station/edit.ts';
import type { RingColour } from '../../station/schema/ring-colour.ts';
import type { PortRef } from '../../station/schema/schema.ts';
import type { MixUp } from '../acts/mix-up.ts';

/** One thing that keeps a hand from mix-ups: a ring of one colour at a jack, or at several that are alike. */
export interface Measure {
  /** The same for the same measure on the same drawing: `ring receiver.antenna BU`. */
  readonly id: string;
  readonly kind: 'ring';
  /** Null where a ring has to go. */
  readonly colour: RingColour | null;
  /** The jacks that get the ring; the plug that is drawn in each gets it too. */
  readonly ports: readonly [PortRef, ...PortRef[]];
  /** This measure alone; several together are `applyMeasures`. */
  readonly change: Change;
  /** `Ring blue (BU) at Receiver · antenna and on the plug of R1`. */
  readonly words: string;
  /** Mix-ups that injure or destroy in which its jacks take part, and which the whole scheme prevents. */
  readonly prevents: readonly MixUp[];
}

/** The smallest set of measures found after which no mix-up is left that injures or destroys and that rings can tell. */
export interface Scheme {
  readonly measures: readonly Measure[];
  /** Whether no smaller one is possible: fewer colours, or as few on fewer jacks. False where the search was cut short. */
  readonly exact: boolean;
  /** Mix-ups that injure or destroy and stay: `precautionFor` says what helps. */
  readonly left: readonly MixUp[];
}
