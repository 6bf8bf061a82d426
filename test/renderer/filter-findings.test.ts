import { describe, expect, it } from 'vitest';
import type { Finding, Severity } from '../../core/index.ts';
import { filterFindings } from '../../renderer/stages/check/filter-findings.ts';
import { fixEffect } from '../../renderer/stages/check/fix-effect.ts';
import { groupFindings } from '../../renderer/stages/check/group-findings.ts';
import { keepTyped } from '../../renderer/stages/check/keep-typed.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');

const finding = (id: string, severity: Severity, more: Partial<Finding> = {}): Finding => ({
  id,
  rule: 'power/test',
  severity,
  title: id,
  message: '',
  why: '',
  advice: '',
  at: [{ unit: 'receiver' }],
  values: {},
  hookups: [],
  moments: [],
  ...more,
});

const all = groupFindings([
  finding('swapped', 'danger', { at: [{ unit: 'receiver', port: 'power' }, { cable: 'd4' }] }),
  finding('no power', 'fault', { causedBy: 'swapped', at: [{ unit: 'phones' }] }),
  finding('fuse', 'danger', { at: [{ unit: 'strip' }] }),
  finding('plug', 'fault', { at: [{ cable: 'a1', end: 'a' }] }),
  finding('advice', 'note', { at: [{ cable: 'r2' }] }),
  finding('lived with', 'doubt', { at: [{ unit: 'meter' }], accepted: 'yes' }),
]);

const units = (...ids: string[]) => ({ units: ids, cables: [] });

describe('filtering findings', () => {
  it.each([
    { name: 'nothing is hidden', hidden: [], about: null, left: ['swapped', 'fuse', 'plug', 'advice'], away: 0 },
    { name: 'no dangers', hidden: ['danger'], about: null, left: ['plug', 'advice'], away: 2 },
    {
      name: 'no doubts: accepted ones go too',
      hidden: ['doubt'],
      about: null,
      left: ['swapped', 'fuse', 'plug', 'advice'],
      away: 1,
    },
    {
      name: 'of a unit, and of the end of a cable at it',
      hidden: [],
      about: units('receiver'),
      left: ['swapped', 'plug'],
      away: 3,
    },
    { name: 'of a unit that only a consequence is at', hidden: [], about: units('phones'), left: ['swapped'], away: 4 },
    { name: 'of a cable', hidden: [], about: { units: [], cables: ['r2', 'a1'] }, left: ['plug', 'advice'], away: 3 },
    { name: 'of a unit at the other end', hidden: [], about: units('changeover'), left: [], away: 5 },
    { name: 'both filters', hidden: ['danger'], about: units('receiver'), left: ['plug'], away: 4 },
    { name: 'of a unit that is gone', hidden: [], about: units('gone'), left: [], away: 5 },
  ] as const)('$name', ({ hidden, about, left, away }) => {
    const { open, accepted, hiddenCount } = filterFindings(hut, all, { hidden, about });
    expect(open.map((c) => c.finding.id)).toEqual(left);
    expect(hiddenCount).toBe(away);
    expect(open.length + accepted.length + hiddenCount).toBe(5);
  });
});

describe('a list while a reason is typed', () => {
  const [a, b, c] = ['a', 'b', 'c'].map((id) => finding(id, 'fault')) as [Finding, Finding, Finding];
  const causes = (...list: Finding[]) => list.map((f) => ({ finding: f, consequences: [] }));
  const typing = { b: { finding: b, text: 'because' } };
  it.each([
    {
      name: 'what is there stays as it is',
      open: [a, b, c],
      before: ['a', 'b', 'c'],
      order: ['a', 'b', 'c'],
      gone: [],
    },
    {
      name: 'what is no longer found stays at its place',
      open: [a, c],
      before: ['a', 'b', 'c'],
      order: ['a', 'b', 'c'],
      gone: ['b'],
    },
    { name: 'first where it was first', open: [a, c], before: ['b', 'a', 'c'], order: ['b', 'a', 'c'], gone: ['b'] },
    {
      name: 'its neighbour gone too, after the one before that',
      open: [a],
      before: ['a', 'c', 'b'],
      order: ['a', 'b'],
      gone: ['b'],
    },
    { name: 'alone where nothing is left', open: [], before: ['a', 'b'], order: ['b'], gone: ['b'] },
  ])('$name', ({ open, before, order, gone }) => {
    const list = keepTyped(causes(...open), typing, before, new Set(open.map((f) => f.id)));
    expect(list.map((entry) => entry.finding.id)).toEqual(order);
    expect(list.filter((entry) => entry.gone).map((entry) => entry.finding.id)).toEqual(gone);
  });
  it('one that the filter hides is not taken for gone', () => {
    expect(keepTyped(causes(a), typing, ['a', 'b'], new Set(['a', 'b'])).map((e) => e.finding.id)).toEqual(['a']);
  });
});

describe('what a fix does to the findings', () => {
  const cause = finding('cause', 'danger');
  const first = finding('first', 'fault', { causedBy: 'cause' });
  const second = finding('second', 'fault', { causedBy: 'cause' });
  const other = finding('other', 'note');
  const fresh = finding('fresh', 'doubt', { title: 'It hums' });
  it.each<[string, Finding[], Finding[], string]>([
    ['alone', [cause, other], [other], 'It removes this finding.'],
    ['with one', [cause, first], [], 'It removes this finding and 1 that follows from it.'],
    ['with two', [cause, first, second], [], 'It removes this finding and 2 that follow from it.'],
    ['with others', [cause, first, other], [], 'It removes this finding and 1 that follows from it and 1 other.'],
    ['one comes', [cause], [fresh], 'It removes this finding. Then a doubt shows: “It hums”.'],
    [
      'two come',
      [cause],
      [fresh, { ...fresh, id: 'more', title: 'It buzzes' }],
      'It removes this finding. Then 2 others show: “It hums”, “It buzzes”.',
    ],
    [
      'what follows from another is not told',
      [cause],
      [other, { ...first, causedBy: 'other' }],
      'It removes this finding. Then a note shows: “other”.',
    ],
    ['in vain', [cause], [cause], 'This finding stays.'],
    ['in vain, but', [cause, other], [cause], 'This finding stays, but 1 other goes.'],
  ])('%s', (_, before, after, words) => expect(fixEffect(cause, before, after)).toBe(words));
});
