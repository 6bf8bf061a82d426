import { describe, expect, test } from 'vitest';
import type { Finding, Severity } from '../../core/index.ts';
import { layingEffect } from '../../renderer/canvas/laying/laying-effect.ts';

const finding = (id: string, severity: Severity, more: Partial<Finding> = {}): Finding => ({
  id,
  rule: 'power/some',
  severity,
  title: id,
  message: `${id} is so.`,
  why: '',
  advice: '',
  at: [],
  values: {},
  hookups: [],
  moments: [],
  ...more,
});
const [danger, fault, doubt, note] = [
  finding('A', 'danger'),
  finding('B', 'fault'),
  finding('C', 'doubt'),
  finding('D', 'note'),
];
const none = 'It would bring no danger and no fault, and end none.';

describe('what a cable would do to the findings', () => {
  test.each<[string, Finding[], Finding[], string]>([
    ['the worst that it brings, in whatever order', [], [fault, danger], 'It would bring a danger: A is so.'],
    ['what it brings comes before what it ends', [danger], [fault], 'It would bring a fault: B is so.'],
    ['what it ends, where it brings no more than doubt', [fault], [doubt], 'It would end a fault: B is so.'],
    ['a doubt, where there is nothing else', [], [note, doubt], 'It would bring a doubt: C is so.'],
    ['what was there before is not its doing', [danger], [danger], none],
    ['advice is not told', [], [note], none],
    ['nor what follows from another', [], [finding('E', 'danger', { causedBy: 'A' })], none],
    ['nor what was accepted', [finding('F', 'fault', { accepted: 'as meant' })], [], none],
  ])('%s', (_, before, after, words) => expect(layingEffect(before, after)).toBe(words));
});
