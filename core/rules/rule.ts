import type { Moment, Trial } from '../keydown/key-down.ts';
import type { Fix } from '../station/fix.ts';
import type { Place } from '../station/place.ts';
import type { Hookup, Station } from '../station/schema/schema.ts';
import type { Severity } from './finding.ts';
import type { ThingName, Things } from './things.ts';

/** One hook-up, tried. */
export interface TriedHookup {
  readonly hookup: Hookup;
  readonly trial: Trial;
}

/** All that a rule may look at. */
export interface Facts {
  readonly station: Station;
  readonly hookups: readonly TriedHookup[];
}

/** What a rule says of one place in one hook-up. */
export interface Report<M extends string = string> {
  readonly message: M;
  readonly severity: Severity;
  readonly at: readonly [Place, ...Place[]];
  readonly values: Readonly<Record<string, number | string>>;
  /** The hook-up that was looked at, where a rule names none; none, and so every one, where it looks at the whole station. */
  readonly hookup?: string;
  readonly moment?: Moment['name'];
  /** Further things that take part, by which a consequence finds its cause: `unit:`, `cable:`, `fuse:`, `supply:` and an id. */
  readonly touches?: readonly string[];
  /** How bad it is: of the same thing in several moments and hook-ups, the greatest is told. */
  readonly weight?: number;
  /** In place of the rule's own, where this message has other causes. */
  readonly follows?: readonly string[];
  readonly fix?: Fix;
}

/** A rule is data and one function. */
export interface Rule<M extends string = string> {
  /** Its path in `core/rules`: `power/reversed-polarity`. */
  readonly id: string;
  /** The worst it reports. */
  readonly severity: Severity;
  readonly title: string;
  readonly compares: string;
  readonly why: string;
  readonly advice: string;
  /** Where its limit comes from. */
  readonly source: string;
  /** It concludes that the drawing is wrong, which it does not become by a part that fails. */
  readonly judgesDrawing?: true;
  /** Ids of the rules whose findings may be the cause of this one's. */
  readonly follows: readonly string[];
  /**
   * Sentences with placeholders: `{name}` for words, `{volts V}`, `{amps A}`, `{watts W}`, `{level dBm}`, `{time ms}`,
   * `{ohms Ω}`, `{length m}`, `{share %}`, `{rating rated}` for numbers, which are written with their unit.
   */
  readonly messages: Readonly<Record<M, string>>;
  /** What it looks at, one at a time. */
  readonly looksAt: LooksAt<M>;
}

export type Tell<M extends string> = (report: Report<M>) => void;

/** For each thing that a rule looks at what it does with one of them in one hook-up; `station` is called once for all hook-ups. */
export type LooksAt<M extends string> = {
  readonly [T in ThingName]?: (thing: Things[T], around: Around, tell: Tell<M>) => void;
} & { readonly station?: (facts: Facts, tell: Tell<M>) => void };

/**
 * The hook-up in which a rule looks at a thing. What it says of a thing is kept after an edit while what it looked at is the
 * same. Without asking it may look at the thing; at its unit, that unit's kind, settings and the states of its actors, the
 * cables there and the units at their other ends; of a cable at both its units and all cables there; of a region at all
 * that is in it; at plan, settings and connectors. Whatever lies further it asks the solutions and the queries of
 * `core/trial`, which write it down (`circuit.reads`), never a list of the whole circuit or station.
 */
export interface Around {
  readonly station: Station;
  readonly hookup: Hookup;
  readonly trial: Trial;
}

/** A fix for a report, where there is one. */
export const fixed = (fix: Fix | undefined): Pick<Report, 'fix'> => (fix ? { fix } : {});

/** The rule as it is given; types its message ids. */
export const defineRule = <M extends string>(rule: Rule<M>): Rule<M> => rule;
