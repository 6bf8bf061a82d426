import type { Fix } from '../station/fix.ts';
import type { Place } from '../station/place.ts';

/** From worst to mildest: can hurt or destroy; will not work; marginal or not known; advice. */
export const severities = ['danger', 'fault', 'doubt', 'note'] as const;
export type Severity = (typeof severities)[number];

/** The worst severity among findings, of which there is one at least. */
export const worstOf = (findings: readonly Pick<Finding, 'severity'>[]): Severity =>
  severities.find((severity) => findings.some((f) => f.severity === severity)) ?? 'note';

/** What a rule found, once for all the hook-ups and moments in which it is so. */
export interface Finding {
  /** The rule and the first place: the same from survey to survey while the mistake is there. */
  readonly id: string;
  /** The rule's id, `power/reversed-polarity`. */
  readonly rule: string;
  /** As grave as the worst that follows from it and is not accepted. */
  readonly severity: Severity;
  /** What it is by itself, where that is less. */
  readonly own?: Severity;
  readonly title: string;
  /** What is wrong, with the figures, in plain words. */
  readonly message: string;
  /** Why it matters. */
  readonly why: string;
  /** What to do about it. */
  readonly advice: string;
  readonly at: readonly Place[];
  /** The figures in the message, in volts, amperes, watts, dBm, ohms or milliseconds as the name says. */
  readonly values: Readonly<Record<string, number | string>>;
  /** Ids of the hook-ups. */
  readonly hookups: readonly string[];
  readonly moments: readonly string[];
  /** The id of the finding that this one follows from. */
  readonly causedBy?: string;
  /** The user's reason for accepting it. */
  readonly accepted?: string;
  readonly fix?: Fix;
  /** Where something else may be what is wrong instead: what puts that right. */
  readonly orFix?: readonly Fix[];
}
