import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openOhms, type PowerUpSheet } from '../../core/index.ts';
import { noCauses, powerUpStore } from '../../renderer/stages/power-up/power-up-store.ts';
import { beginRound, shownSince, sinceForWriting } from '../../renderer/stages/power-up/round.ts';
import { runPowerUp } from '../../renderer/stages/power-up/run-power-up.ts';
import { change, currentStation, openDocument } from '../../renderer/store/document.ts';
import { sheetLimitMs } from '../../renderer/worker/limits.ts';
import type { PowerUpAnswer, PowerUpRequest } from '../../renderer/worker/power-up-messages.ts';
import { sample } from '../stations/samples.ts';
import { HandThread } from './hand-thread.ts';

const step = 'lead/d1/across';
const expected = { quantity: 'ohm', value: null, from: 1e6, to: null } as const;
const sheet: PowerUpSheet = {
  first: [],
  hookup: 'On the dummy load',
  cautions: [],
  parts: [
    {
      id: 'unpowered',
      title: '',
      before: '',
      steps: [{ id: step, text: '', where: '', at: [], expected, warning: null, figure: null }],
    },
  ],
};

type Hand = HandThread<PowerUpRequest, PowerUpAnswer>;
let workers: Hand[];
let end: () => void;
const read = (value: number, when = '2026-05-01T09:00:00.000Z') =>
  change({ type: 'addReading', reading: { step, value, unit: 'Ω', when } });
const start = () => {
  end = runPowerUp(() => {
    const worker: Hand = new HandThread();
    workers.push(worker);
    return worker;
  });
};

beforeEach(() => {
  powerUpStore.setState({ sheet: { is: 'computing' }, ...noCauses, round: null });
  openDocument(sample('hut'));
  workers = [];
  start();
});

afterEach(() => end());

/** What the threads were asked, in the order in which they were opened. */
const asked = () => workers.flatMap((w) => w.asked);
const shown = () => powerUpStore.getState();

test('the sheet is asked for at once, and once', () => {
  expect(asked()).toEqual([{ wants: 'sheet', station: currentStation() }]);
  expect(shown().sheet).toEqual({ is: 'computing' });
  workers[0]!.answer({ sheet });
  expect(shown().sheet).toMatchObject({ is: 'fresh', value: sheet });
  expect(asked()).toHaveLength(1);
});

test('a reading that is right asks nothing; one that is off asks for its causes', () => {
  workers[0]!.answer({ sheet });
  read(openOhms);
  expect(asked()).toHaveLength(1);
  read(3, '2026-05-01T09:01:00.000Z');
  const off = [{ step, value: 3 }];
  expect(asked()[1]).toEqual({ wants: 'causes', station: currentStation(), off, all: off });
  expect(shown().looking).toBe(true);
  const causes = { [step]: [{ text: 'D1 is shorted', at: { cable: 'd1' }, fits: true }] };
  workers[1]!.answer({ causes });
  expect(shown()).toMatchObject({ causes, looking: false });
});

test('an edit of the drawing asks for a new sheet', () => {
  workers[0]!.answer({ sheet });
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 2 } });
  expect(asked().map((r) => r.wants)).toEqual(['sheet', 'sheet']);
});

test('causes by the sheet before are not told of the next', () => {
  workers[0]!.answer({ sheet });
  read(3);
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 2 } });
  workers[1]!.answer({ causes: { [step]: [{ text: 'D1 is shorted', at: { cable: 'd1' }, fits: true }] } });
  workers[0]!.answer({ sheet: { ...sheet, hookup: 'Another' } });
  expect(shown()).toMatchObject({ causes: {}, looking: true });
  expect(workers[1]!.asked).toHaveLength(2);
});

test('shown again, the sheet is still there and nothing is asked', () => {
  workers[0]!.answer({ sheet });
  end();
  expect(workers[0]!.ended).toBe(true);
  start();
  expect(workers).toHaveLength(1);
  expect(shown().sheet).toMatchObject({ is: 'fresh', value: sheet });
});

test('shown again with a reading off, only its causes are asked for', () => {
  workers[0]!.answer({ sheet });
  end();
  read(3);
  start();
  expect(asked().map((r) => r.wants)).toEqual(['sheet', 'causes']);
});

test('shown again for another document, the sheet of the one before is not there', () => {
  workers[0]!.answer({ sheet });
  end();
  openDocument(sample('hut'));
  start();
  expect(shown().sheet).toEqual({ is: 'computing' });
});

test('what can’t be worked out is said, marks the last sheet, and is asked again after the next edit only', () => {
  workers[0]!.answer({ sheet });
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 2 } });
  workers[0]!.breakDown('out of memory');
  expect(shown().sheet).toMatchObject({
    is: 'old',
    value: sheet,
    failure: { words: expect.stringMatching(/out of memory/) },
  });
  expect(workers).toHaveLength(1);
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 3 } });
  expect(workers[1]!.asked).toHaveLength(1);
});

test('the step that a sheet is older than is one of the drawing, not a reading', () => {
  workers[0]!.answer({ sheet });
  read(openOhms);
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 2 } });
  workers[0]!.fail('no');
  expect(shown().sheet).toMatchObject({ is: 'old', since: '“Change cable”' });
});

test('a sheet and causes that never come are ended after their limit, each in a sentence', () => {
  vi.useFakeTimers();
  end();
  powerUpStore.setState({ sheet: { is: 'computing' }, ...noCauses });
  start();
  const limitMs = sheetLimitMs(currentStation());
  vi.advanceTimersByTime(limitMs + 1000);
  expect(workers[1]!.ended).toBe(true);
  expect(shown().sheet).toMatchObject({
    is: 'missing',
    failure: { words: expect.stringMatching(/^It took longer than/) },
  });
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 2 } });
  workers[2]!.answer({ sheet });
  read(3);
  vi.advanceTimersByTime(limitMs + 1000);
  expect(workers[3]!.ended).toBe(true);
  expect(shown()).toMatchObject({
    looking: false,
    causesFailure: { words: expect.stringMatching(/^It took longer than/) },
  });
  vi.useRealTimers();
});

test('a reading within half a day goes on with the round; a year later one begins anew', () => {
  read(openOhms);
  expect(shownSince(currentStation())).toBe('2026-05-01T09:00:00.000Z');
  expect(sinceForWriting(currentStation(), new Date('2026-05-01T15:00:00Z'))).toBe('2026-05-01T09:00:00.000Z');
  expect(sinceForWriting(currentStation(), new Date('2027-05-01T09:00:00Z'))).toBe('2027-05-01T09:00:00.000Z');
  expect(shownSince(currentStation())).toBe('2027-05-01T09:00:00.000Z');
});

test('a round begun by hand is of this document alone', () => {
  read(openOhms);
  beginRound(new Date('2026-05-01T10:00:00Z'));
  expect(shownSince(currentStation())).toBe('2026-05-01T10:00:00.000Z');
  openDocument(sample('hut'));
  expect(shownSince(currentStation())).toBe('');
});
