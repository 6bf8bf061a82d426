import { describe, expect, it } from 'vitest';
import { type Finding, type Severity, severities } from '../../core/rules/finding.ts';
import { rules } from '../../core/rules/index.ts';
import type { Rule } from '../../core/rules/rule.ts';
import { edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Place } from '../../core/station/place.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';

interface SilentCase {
  name: string;
  station: Station;
}

interface ReportedCase extends SilentCase {
  message: string;
  severity: Severity;
  /** The first place; the others may follow. */
  at: Place;
  /** Words exactly; numbers within `within` (relative, 0.001 if not given). */
  values?: Record<string, number | string>;
  within?: number;
  hookups?: string[];
  moments?: string[];
  /** Rules that speak once the mistake that hid theirs is put right: the station has others. */
  unmasks?: string[];
}

/**
 * What every rule has to stand: it is silent where all is right, reports each of its messages somewhere at the right
 * place with the right figures, leaves no placeholder and does not touch the station; its fix, if it has one, removes
 * the finding.
 */
export function testRule(rule: Rule, { silent, reported }: { silent: SilentCase[]; reported: ReportedCase[] }) {
  describe(rule.id, () => {
    it('is in the index', () => expect(rules).toContain(rule));
    it('has a silent and a reported station', () => {
      expect(silent.length).toBeGreaterThan(0);
      expect(reported.length).toBeGreaterThan(0);
    });
    it('reaches every message', () => {
      const reached = new Set(reported.map((c) => c.message));
      expect([...reached].sort()).toEqual(Object.keys(rule.messages).sort());
    });
    it('is as grave as the worst that it reports', () => {
      const given = new Set(reported.map((c) => c.severity));
      expect(severities.find((severity) => given.has(severity))).toBe(rule.severity);
    });
    it.each(silent)('is silent: $name', ({ station }) => {
      expect(findingsOf(rule, station).map((f) => f.message)).toEqual([]);
    });
    it.each(reported)('reports: $name', (given) => checkReported(rule, given));
  });
}

function checkReported(rule: Rule, given: ReportedCase) {
  const before = JSON.stringify(given.station);
  const findings = findingsOf(rule, given.station);
  expect(JSON.stringify(given.station)).toBe(before);
  const finding = findings.find(
    (f) => f.id.startsWith(`${rule.id}:${given.message}@`) && isSamePlace(f.at[0], given.at),
  );
  if (!finding)
    throw new Error(`not reported; what is: ${findings.map((f) => `${f.id} ${f.message}`).join(' / ') || 'nothing'}`);
  expect(finding.own ?? finding.severity).toBe(given.severity);
  expect(finding.message).not.toMatch(/[{}]|undefined|NaN/);
  for (const [name, wanted] of Object.entries(given.values ?? {})) {
    const value = finding.values[name];
    if (typeof wanted === 'string') expect(value, name).toBe(wanted);
    else
      expect(Math.abs(Number(value) - wanted), `${name} = ${value}`).toBeLessThanOrEqual(
        Math.abs(wanted) * (given.within ?? 1e-3) + 1e-9,
      );
  }
  if (given.hookups) expect(finding.hookups).toEqual(given.hookups);
  if (given.moments) expect(finding.moments).toEqual(given.moments);
  if (finding.fix) checkFix(given, finding, edit(given.station, finding.fix.change));
}

/** A fix takes its finding away and brings no other that is more than a note. */
function checkFix({ station: before, unmasks = [] }: ReportedCase, finding: Finding, after: Station) {
  const grave = (station: Station) => survey(station).findings.filter((f) => f.severity !== 'note');
  const known = new Set(grave(before).map((f) => f.id));
  const left = grave(after);
  expect(left.map((f) => f.id)).not.toContain(finding.id);
  const fresh = left.filter((f) => !known.has(f.id) && !unmasks.includes(f.rule));
  expect(fresh.map((f) => `${f.id}: ${f.message}`)).toEqual([]);
  expect('problems' in readStation(writeStation(after)) ? 'does not read' : 'reads').toBe('reads');
}

const findingsOf = (rule: Rule, station: Station): Finding[] =>
  survey(station).findings.filter((f) => f.rule === rule.id);

const isSamePlace = (a: Place | undefined, b: Place): boolean =>
  JSON.stringify(sorted(a)) === JSON.stringify(sorted(b));

const sorted = (place: Place | undefined) => Object.entries(place ?? {}).sort(([a], [b]) => (a < b ? -1 : 1));
