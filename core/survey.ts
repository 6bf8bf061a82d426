import { tryHookup } from './keydown/try-hookup.ts';
import type { Finding } from './rules/finding.ts';
import { findingsFrom } from './rules/findings-from.ts';
import { rules } from './rules/index.ts';
import type { Facts, TriedHookup } from './rules/rule.ts';
import { type Memory, runRules } from './rules/run-rules.ts';
import { hookupsOf } from './station/parts.ts';
import type { Station } from './station/schema/schema.ts';

/** A station looked at from end to end: each hook-up tried, and what the rules found. */
export interface Survey extends Facts {
  readonly findings: readonly Finding[];
  /** What a survey after an edit can keep of what was said. */
  readonly memory: Memory;
}

/**
 * Surveys a station: for each hook-up the contact-level circuit, its state at rest and through the press of each
 * control (DC and RF solved at every step), then the findings of all rules over all of it. What is the same as in the
 * survey of the station `before` a change is taken from there; the answer is the same without it, but for rounding.
 */
export function survey(station: Station, before: Survey | null = null): Survey {
  const hookups: TriedHookup[] = [];
  for (const hookup of hookupsOf(station)) {
    const known = before?.hookups.find((h) => h.hookup.id === hookup.id)?.trial ?? null;
    const others = hookups.map(({ trial }) => trial);
    hookups.push({ hookup, trial: tryHookup(station, hookup, known, others) });
  }
  const facts: Facts = { station, hookups };
  const { said, memory } = runRules(facts, rules, before?.memory);
  return { ...facts, findings: findingsFrom(facts, said), memory };
}
