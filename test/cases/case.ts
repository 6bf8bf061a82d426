import type { Severity } from '../../core/rules/finding.ts';
import type { Place } from '../../core/station/place.ts';
import type { Station } from '../../core/station/schema/schema.ts';

/** A finding that a case must give. */
export interface Wanted {
  readonly rule: string;
  /** The first place that the finding names. */
  readonly at: Place;
  /** Figures by name, within a share of `within` (0.05 if not given: accounts round). */
  readonly values?: Readonly<Record<string, number | string>>;
  readonly within?: number;
  readonly severity?: Severity;
}

/** A real mistake, told in our words, and the same station put right. */
export interface Trouble {
  readonly id: string;
  readonly about: string;
  /** How far a drawing can say it: wholly, or some of it. */
  readonly catch: 'yes' | 'partly';
  readonly wrong: Station;
  readonly right: Station;
  readonly finds: readonly Wanted[];
  /** What is wrong shows only when this one thing fails (an id of the failure study). */
  readonly whenFails?: string;
}

/** A station that looks odd and is right: nothing above a note. */
export interface Correct {
  readonly id: string;
  readonly about: string;
  readonly station: Station;
}
