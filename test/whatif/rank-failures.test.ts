import { describe, expect, it } from 'vitest';
import type { Finding, Severity } from '../../core/rules/finding.ts';
import { rankFailures } from '../../core/whatif/rank-failures.ts';
import type { FailureStudy } from '../../core/whatif/study-failures.ts';
import type { Weakness } from '../../core/whatif/weakness-of.ts';
import { sampleFailures } from '../stations/samples.ts';

const finding = (severity: Severity, causedBy?: string): Finding => ({
  id: severity,
  rule: 'power/not-powered',
  severity,
  title: '',
  message: '',
  why: '',
  advice: '',
  at: [],
  values: {},
  hookups: [],
  moments: [],
  ...(causedBy && { causedBy }),
});
const study = (id: string, weakness: Weakness | null, findings: Finding[]): FailureStudy => ({
  failure: {
    id,
    kind: 'opens',
    text: id,
    at: { unit: 'u' },
    parts: [],
    alike: [],
    held: new Map(),
    volts: new Map(),
  },
  hookups: [],
  findings,
  weakness,
});
const order = (studies: FailureStudy[]) =>
  rankFailures(studies).groups.map((g) => [g.weakness, g.failures.map((f) => f.failure.id)]);

describe('failures are grouped by weakness and ranked', () => {
  it('the group with the worst failure comes first, and in it the worst', () => {
    const [danger, fault, doubt] = [finding('danger'), finding('fault'), finding('doubt')];
    expect(
      order([
        study('dull', null, [doubt]),
        study('warm', 'hidden return', [fault]),
        study('stuck', 'stuck relay', [doubt, danger]),
        study('hot', 'stuck relay', [danger, fault, doubt]),
        study('bare', null, [danger]),
      ]),
    ).toEqual([
      ['stuck relay', ['hot', 'stuck']],
      [null, ['bare', 'dull']],
      ['hidden return', ['warm']],
    ]);
  });

  it('the worst harm is told first, whatever the order of the findings', () => {
    const [group] = rankFailures([study('one', null, [finding('doubt'), finding('danger')])]).groups;
    expect(group?.failures[0].harms.map((f) => f.severity)).toEqual(['danger', 'doubt']);
    expect(group?.failures[0].severity).toBe('danger');
  });

  it('advice, and what follows from something else, is no harm, but counted as tried', () => {
    const ranked = rankFailures([
      study('quiet', null, []),
      study('advice', null, [finding('note')]),
      study('follows', null, [finding('fault', 'other')]),
    ]);
    expect(ranked).toEqual({ tried: 3, harmless: 3, groups: [] });
  });

  it('in the hut each harmful failure stands in one group, under a cure', () => {
    const { tried, harmless, groups } = rankFailures(sampleFailures('hut'));
    const listed = groups.flatMap((g) => g.failures);
    expect(new Set(listed.map((f) => f.failure.id)).size).toBe(listed.length);
    expect(listed.length + harmless).toBe(tried);
    for (const { weakness, cure, failures } of groups) {
      expect(cure).not.toBe('');
      for (const failure of failures) expect(failure.weakness).toBe(weakness);
    }
    // Its minus leads have a second way over the braids: tried in study-failures.test.ts.
    expect(groups.find((g) => g.weakness === 'hidden return')?.failures.map((f) => f.failure.text)).toContain(
      'Minus of D4 opens',
    );
  });
});
