import { describe, expect, it } from 'vitest';
import { acceptFinding } from '../../core/rules/accept.ts';
import type { Finding, Severity } from '../../core/rules/finding.ts';
import { nameOfPlace } from '../../core/rules/findings-from.ts';
import type { Facts, Report, Rule } from '../../core/rules/rule.ts';
import { createStation } from '../../core/station/create-station.ts';
import { edit } from '../../core/station/edit.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { collectFindings } from './collect-findings.ts';

/** A rule made up for a test that reports just this. */
const rule = (id: string, reports: Report[], follows: string[] = []): Rule => ({
  id,
  severity: 'danger',
  title: id,
  compares: '',
  why: 'why',
  advice: 'advice',
  source: 'a test',
  follows,
  messages: { said: 'It is {volts V}.', other: 'Other.' },
  looksAt: { station: (_, report) => reports.forEach(report) },
});

const at = (unit: string, set: Partial<Report> = {}): Report => ({
  message: 'said',
  severity: 'fault',
  at: [{ unit }],
  values: { volts: 13.8 },
  ...set,
});

const collect = (rules: Rule[], station: Station = createStation('Test')): Finding[] => {
  const hookups = ['one', 'two', 'three'].map((id) => ({ hookup: { id, name: id }, trial: {} as never }));
  const facts: Facts = { station, hookups };
  return collectFindings(facts, rules);
};
const causes = (findings: readonly Finding[]) => Object.fromEntries(findings.map((f) => [f.rule, f.causedBy]));

describe('the same thing', () => {
  it('in two hook-ups and moments is one finding that names them', () => {
    const found = collect([
      rule('a', [
        at('tx', { hookup: 'two', moment: 'sending' }),
        at('tx', { hookup: 'one', moment: 'receive' }),
        at('tx', { hookup: 'two', moment: 'receive' }),
      ]),
    ]);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ id: 'a:said@tx', hookups: ['two', 'one'], moments: ['receive', 'sending'] });
  });
  it('said of no hook-up is so in every one', () =>
    expect(collect([rule('a', [at('tx')])])[0]?.hookups).toEqual(['one', 'two', 'three']));
  it('is told by the gravest report, then by the weightiest, then by the first', () => {
    const told = (reports: Report[]) => collect([rule('a', reports)])[0]?.message;
    const [mild, grave] = [at('tx', { severity: 'doubt', weight: 9 }), at('tx', { weight: 1, values: { volts: 11 } })];
    expect(told([mild, grave])).toBe('It is 11.00 V.');
    expect(told([grave, mild])).toBe('It is 11.00 V.');
    const heavier = at('tx', { weight: 2, values: { volts: 10 } });
    expect(told([grave, heavier, grave])).toBe('It is 10.00 V.');
    const same = at('tx', { weight: 1 + 1e-9, values: { volts: 9 } });
    expect(told([grave, same])).toBe('It is 11.00 V.');
  });
  it('at two places or in two messages is two findings', () =>
    expect(collect([rule('a', [at('tx'), at('rx'), at('tx', { message: 'other' })])]).map((f) => f.id)).toEqual([
      'a:said@tx',
      'a:said@rx',
      'a:other@tx',
    ]));
});

it('names places by unit, port and contact, or by cable and end', () => {
  expect(nameOfPlace({ unit: 'tx', port: 'key', contact: 'tip' })).toBe('tx.key.tip');
  expect(nameOfPlace({ unit: 'tx' })).toBe('tx');
  expect(nameOfPlace({ cable: 'd1', end: 'b' })).toBe('cable d1.b');
  expect(nameOfPlace({ cable: 'd1' })).toBe('cable d1');
});

describe('folding', () => {
  const cause = rule('cause', [at('tx')]);
  it('puts a consequence under its cause where both are about one unit', () =>
    expect(causes(collect([cause, rule('effect', [at('tx')], ['cause'])]))).toEqual({
      cause: undefined,
      effect: 'cause:said@tx',
    }));
  it('goes by what takes part as well', () =>
    expect(causes(collect([cause, rule('effect', [at('rx', { touches: ['unit:tx'] })], ['cause'])]))['effect']).toBe(
      'cause:said@tx',
    ));
  it('goes to the root, however many are between', () => {
    const middle = rule('middle', [at('rx', { touches: ['unit:tx'] })], ['cause']);
    const effect = rule('effect', [at('phones', { touches: ['unit:rx'] })], ['middle']);
    expect(causes(collect([cause, middle, effect]))).toEqual({
      cause: undefined,
      middle: 'cause:said@tx',
      effect: 'cause:said@tx',
    });
  });
  it('needs a part in common', () =>
    expect(causes(collect([cause, rule('effect', [at('rx')], ['cause'])]))['effect']).toBeUndefined());
  it('needs a hook-up in common', () => {
    const here = rule('cause', [at('tx', { hookup: 'one' })]);
    const there = (hookup: string) => rule('effect', [at('tx', { hookup })], ['cause']);
    expect(causes(collect([here, there('two')]))['effect']).toBeUndefined();
    expect(causes(collect([here, there('one')]))['effect']).toBe('cause:said@tx');
  });
  it('needs a rule that names the other one', () =>
    expect(causes(collect([cause, rule('effect', [at('tx')])]))['effect']).toBeUndefined());
  it('takes the earlier rule of two causes', () => {
    const [a, b] = [rule('a', [at('tx', { severity: 'note' })]), rule('b', [at('tx', { severity: 'danger' })])];
    expect(causes(collect([a, b, rule('effect', [at('tx')], ['b', 'a'])]))['effect']).toBe('a:said@tx');
  });
  it('lets a message name causes of its own', () =>
    expect(causes(collect([cause, rule('effect', [at('tx', { follows: [] })], ['cause'])]))['effect']).toBeUndefined());
  it('never runs in a circle: of two that blame each other the earlier rule is the cause', () => {
    const found = collect([rule('a', [at('tx')], ['b']), rule('b', [at('tx')], ['a'])]);
    expect(causes(found)).toEqual({ a: undefined, b: 'a:said@tx' });
  });
});

describe('order', () => {
  const of = (severity: Severity) => at('x', { severity });
  it('is worst first, and as the rules stand among equals', () =>
    expect(
      collect([
        rule('note', [of('note')]),
        rule('fault', [of('fault')]),
        rule('doubt', [of('doubt')]),
        rule('danger', [of('danger')]),
        rule('danger-2', [of('danger')]),
      ]).map((f) => f.rule),
    ).toEqual(['danger', 'danger-2', 'fault', 'doubt', 'note']));
  it('has consequences right after their cause, worst first', () =>
    expect(
      collect([
        rule('cause', [at('tx')]),
        rule('other', [at('rx')]),
        rule('mild', [at('tx', { severity: 'doubt' })], ['cause']),
        rule('grave', [at('tx', { severity: 'danger' })], ['cause']),
        rule('last', [at('rx', { severity: 'note' })]),
      ]).map((f) => f.rule),
    ).toEqual(['cause', 'grave', 'mild', 'other', 'last']));
});

describe('acceptance', () => {
  const rules = (volts: number) => [rule('a', [at('tx', { values: { volts, port: 'power' } })])];
  const [finding] = collect(rules(13.8));
  const station = edit(createStation('Test'), acceptFinding(finding as Finding, 'It is only for a test'));
  it('is kept while the figures are the same to three digits', () => {
    expect(finding?.accepted).toBeUndefined();
    expect(collect(rules(13.8), station)[0]?.accepted).toBe('It is only for a test');
    expect(collect(rules(13.8049), station)[0]?.accepted).toBe('It is only for a test');
  });
  it('is gone when a figure changes', () => expect(collect(rules(13.86), station)[0]?.accepted).toBeUndefined());
  it('is gone when a word changes', () =>
    expect(
      collect([rule('a', [at('tx', { values: { volts: 13.8, port: 'other' } })])], station)[0]?.accepted,
    ).toBeUndefined());
  it('is of that finding alone', () =>
    expect(collect([rule('b', [at('tx', { values: { volts: 13.8, port: 'power' } })])], station)[0]?.accepted).toBe(
      undefined,
    ));
  it('can be taken back', () =>
    expect(
      collect(rules(13.8), edit(station, { type: 'takeBack', finding: 'a:said@tx' }))[0]?.accepted,
    ).toBeUndefined());
});
