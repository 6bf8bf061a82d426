import { expect, test } from 'vitest';
import type { KeydownReport } from '../../core/index.ts';
import { relayMargin } from '../../renderer/stages/check/relay-margin.ts';
import { ticksFor } from '../../renderer/stages/check/ticks-for.ts';

test.each([
  { end: 9, expected: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9] },
  { end: 119, expected: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110] },
  { end: 650, expected: [0, 100, 200, 300, 400, 500, 600] },
])('an axis to $end ms has round ticks', ({ end, expected }) => {
  expect(ticksFor(end)).toEqual(expected);
});

const keydown = (overMs: number, rfMs: number): KeydownReport => ({
  hookup: 'air',
  hookupName: 'On the air',
  control: 'key.key',
  controlName: 'Key',
  releasedMs: 80,
  endMs: 90,
  settled: true,
  lanes: [{ unit: 'changeover', actor: 'relay', name: 'Changeover relay', kind: 'changesOver', spans: [[overMs, 85]] }],
  events: [],
  rf: { fromMs: rfMs, toMs: 83, watts: 3 },
  listening: [],
  ditMs: 80,
});

test('a relay that is over before RF leaves a margin', () => {
  expect(relayMargin(keydown(7, 14))).toEqual({ fromMs: 7, toMs: 14, safe: true, words: 'relay over 7 ms before RF' });
});

test('RF before the relay is over is no margin but a fault', () => {
  expect(relayMargin(keydown(7, 4))).toMatchObject({
    fromMs: 4,
    toMs: 7,
    safe: false,
    words: 'RF 3 ms before the relay is over',
  });
});

test('without RF there is no margin', () => {
  expect(relayMargin({ ...keydown(7, 14), rf: null })).toBeNull();
});
