import { type Finding, type Severity, severities } from '../rules/finding.ts';
import type { FailureStudy } from './study-failures.ts';
import type { Weakness } from './weakness-of.ts';

/** A failure that does harm. */
export interface HarmfulFailure extends FailureStudy {
  readonly severity: Severity;
  /** What comes of it, worst first; consequences of consequences and mere advice left out. */
  readonly harms: readonly [Finding, ...Finding[]];
}

/** Failures that lay the same weakness open. */
export interface FailureGroup {
  /** Null for failures that lay none open. */
  readonly weakness: Weakness | null;
  /** What they have in common, as a heading. */
  readonly title: string;
  /** What would cure it, as a sentence. */
  readonly cure: string;
  /** Worst first. */
  readonly failures: readonly [HarmfulFailure, ...HarmfulFailure[]];
}

/** All single failures of a station. */
export interface RankedFailures {
  /** How many failures were tried. */
  readonly tried: number;
  /** How many of them show nothing beyond what the sound station shows. */
  readonly harmless: number;
  /** The others by weakness; the group with the worst failure first. */
  readonly groups: readonly FailureGroup[];
}

interface Words {
  readonly title: string;
  readonly cure: string;
}

/** Common practice, all of it. */
const words: Record<Weakness, Words> = {
  'hidden return': {
    title: 'A minus that opens leaves its current to another lead',
    cure: 'A minus that can’t come off by itself, screwed or locked, and a heavy bond between the boxes, so that no braid and no key lead has to carry supply current.',
  },
  'unsafe without power': {
    title: 'Without power, RF goes where it hurts',
    cure: 'A changeover that rests without power where it does no harm, or keying that passes over it, so that nothing sends while it is off.',
  },
  'stuck relay': {
    title: 'A relay that sticks lets RF go where it hurts',
    cure: 'Keying that passes over a contact of that relay, so that nothing sends before it has moved, and a limiter before whatever it protects.',
  },
  'supply runaway': {
    title: 'A supply at its highest voltage harms what it feeds',
    cure: 'Over-voltage protection at the supply’s output, below what the units stand, with a fuse that it can blow.',
  },
};

const unguarded: Words = {
  title: 'Nothing stands in for it',
  cure: 'Look at it before each use, lock or screw what can work loose, and keep a spare lead and fuse.',
};

/** The failures that do harm, grouped by the weakness that they lay open, in both the worst first. */
export function rankFailures(studies: readonly FailureStudy[]): RankedFailures {
  const harmful = studies.flatMap(withHarms).sort(byHarm);
  const byWeakness = new Map<Weakness | null, [HarmfulFailure, ...HarmfulFailure[]]>();
  for (const failure of harmful) {
    const known = byWeakness.get(failure.weakness);
    if (known) known.push(failure);
    else byWeakness.set(failure.weakness, [failure]);
  }
  const groups = [...byWeakness].map(
    ([weakness, failures]): FailureGroup => ({
      weakness,
      ...(weakness === null ? unguarded : words[weakness]),
      failures,
    }),
  );
  return { tried: studies.length, harmless: studies.length - harmful.length, groups: groups.sort(byWorst) };
}

function withHarms(study: FailureStudy): HarmfulFailure[] {
  const harms = study.findings
    .filter((f) => f.severity !== 'note' && f.causedBy === undefined)
    .sort((a, b) => rank(a.severity) - rank(b.severity));
  const [worst, ...others] = harms;
  return worst ? [{ ...study, severity: worst.severity, harms: [worst, ...others] }] : [];
}

const rank = (severity: Severity): number => severities.indexOf(severity);

const byHarm = (one: HarmfulFailure, two: HarmfulFailure): number =>
  rank(one.severity) - rank(two.severity) || two.harms.length - one.harms.length;

/** Of two groups as bad, the one that a measure cures comes first. */
const byWorst = (one: FailureGroup, two: FailureGroup): number =>
  rank(one.failures[0].severity) - rank(two.failures[0].severity) ||
  Number(one.weakness === null) - Number(two.weakness === null);
