import type { Finding, Severity } from '../../rules/finding.ts';
import type { Act } from './act.ts';

/** Something that a hand could do to a station by mistake, and what comes of it. */
export interface MixUp {
  readonly act: Act;
  /** Other acts that come to the same: into another outlet of the same strip. */
  readonly alike: readonly Act[];
  /** The worst that comes of it, above a note. */
  readonly severity: Severity;
  /** What is found then and not before, worst first, causes before consequences. */
  readonly harms: readonly [Finding, ...Finding[]];
  /** When the worst of it strikes, as it stands in a sentence: `at plugging in`. */
  readonly strikes: string;
  readonly ease: Ease;
}

/** How easily a hand does it. */
export interface Ease {
  /** More is easier; for ranking alone. */
  readonly score: number;
  /** Why it is easy, in half sentences; none where nothing makes it so. */
  readonly words: readonly string[];
}

/** All that a hand could do by mistake to a station. */
export interface MixUpStudy {
  /** How many acts were tried. */
  readonly tried: number;
  /** How many of them brought nothing above a note. */
  readonly harmless: number;
  /** How many more were not tried: rings on plugs and jacks keep a hand from them. */
  readonly prevented: number;
  /** The others, what hurts worst and happens most easily first. */
  readonly mixUps: readonly MixUp[];
}
