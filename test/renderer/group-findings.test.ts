import { expect, test } from 'vitest';
import type { Finding } from '../../core/index.ts';
import { badgeOf } from '../../renderer/canvas/cards/badge-of.ts';
import { groupFindings } from '../../renderer/stages/check/group-findings.ts';

const finding = (id: string, more: Partial<Finding> = {}): Finding => ({
  id,
  rule: 'power/test',
  severity: 'danger',
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

test('what follows from a cause is folded under it, over several steps', () => {
  const { open, counts } = groupFindings([
    finding('cause'),
    finding('second', { causedBy: 'cause', severity: 'fault' }),
    finding('third', { causedBy: 'second', severity: 'fault' }),
    finding('other', { severity: 'note' }),
  ]);
  expect(open.map((c) => [c.finding.id, c.consequences.map((f) => f.id)])).toEqual([
    ['cause', ['second', 'third']],
    ['other', []],
  ]);
  expect(counts).toEqual({ danger: 1, fault: 0, doubt: 0, note: 1 });
});

test('accepted findings are apart; what followed from one stands on its own', () => {
  const { open, accepted } = groupFindings([
    finding('cause', { accepted: 'I know' }),
    finding('second', { causedBy: 'cause' }),
  ]);
  expect(accepted.map((f) => f.id)).toEqual(['cause']);
  expect(open.map((c) => c.finding.id)).toEqual(['second']);
});

test('findings that name each other in a circle do not hang the list', () => {
  const { open } = groupFindings([finding('a', { causedBy: 'b' }), finding('b', { causedBy: 'a' })]);
  expect(open.length).toBeLessThanOrEqual(2);
});

test('a badge counts the open causes at a place in the hook-up looked at, by the worst of them', () => {
  const report = {
    findings: [
      finding('here', { severity: 'doubt', hookups: ['air'] }),
      finding('worse', { severity: 'fault' }),
      finding('elsewhere', { hookups: ['dummy'] }),
      finding('folded', { causedBy: 'worse' }),
      finding('accepted', { accepted: 'I know' }),
    ],
    cables: [],
    budget: { supplies: [], loads: [], branches: [], ways: [], fuses: [], wires: [], batteries: [] },
    keydowns: [],
    overlays: [],
    rf: [],
    audio: [],
  };
  expect(badgeOf(report, 'air', 'receiver')).toEqual({ severity: 'fault', count: 2 });
  expect(badgeOf(report, 'air', 'paddle')).toBeUndefined();
});
