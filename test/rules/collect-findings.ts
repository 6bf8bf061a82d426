import type { Finding } from '../../core/rules/finding.ts';
import { findingsFrom } from '../../core/rules/findings-from.ts';
import type { Facts, Rule } from '../../core/rules/rule.ts';
import { runRules } from '../../core/rules/run-rules.ts';

/** What these rules find. */
export const collectFindings = (facts: Facts, rules: readonly Rule[]): Finding[] =>
  findingsFrom(facts, runRules(facts, rules).said);
