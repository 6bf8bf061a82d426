import type { Place } from '../../../station/place.ts';
import type { Seen, Setup } from '../setup.ts';

/** One thing that may be wrong with the station as it was built, against the drawing. */
export interface Suspect {
  readonly id: string;
  readonly text: string;
  readonly at: Place;
  /** How likely it is by itself: less is likelier (common practice: leads and plugs, then units, then what is in them). */
  readonly rank: number;
  /** What a meter has before it then; null where the setup has no such thing. */
  see(setup: Setup): Seen | null;
  /** Of an open lead or fuse: the same with so many ohms more in it, a joint that has gone bad. */
  readonly withOhms?: (ohms: number) => Suspect;
}

/** A suspect, and what the meter would show. */
export interface Tried {
  readonly suspect: Suspect;
  readonly shows: number;
}
