import { afterEach, beforeEach, expect, test } from 'vitest';
import { openOhms, type PowerUpSheet } from '../../core/index.ts';
import { runPowerUp } from '../../renderer/stages/power-up/power-up-runner.ts';
import { powerUpStore } from '../../renderer/stages/power-up/power-up-store.ts';
import { beginRound, shownSince, sinceForWriting } from '../../renderer/stages/power-up/round.ts';
import { change, currentStation, openDocument } from '../../renderer/store/document.ts';
import type { PowerUpRequest, PowerUpWorker } from '../../renderer/worker/power-up-messages.ts';
import { sample } from '../stations/samples.ts';

class HandWorker implements PowerUpWorker {
  readonly asked: PowerUpRequest[] = [];
  ended = false;
  onmessage: PowerUpWorker['onmessage'] = null;
  onerror: PowerUpWorker['onerror'] = null;
  postMessage(request: PowerUpRequest) {
    this.asked.push(request);
  }
  terminate() {
    this.ended = true;
  }
}

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

let workers: HandWorker[];
let end: () => void;
const read = (value: number, when = '2026-05-01T09:00:00.000Z') =>
  change({ type: 'addReading', reading: { step, value, unit: 'Ω', when } });
const start = () => {
  end = runPowerUp(() => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker;
  });
};

beforeEach(() => {
  powerUpStore.setState({ sheet: null, station: null, causes: {}, explained: '', problem: null, round: null });
  openDocument(sample('hut'));
  workers = [];
  start();
});

afterEach(() => end());

test('the sheet is asked for at once, and once', () => {
  expect(workers[0]!.asked).toEqual([{ wants: 'sheet', station: currentStation() }]);
  workers[0]!.onmessage?.({ data: { sheet } });
  expect(powerUpStore.getState()).toMatchObject({ sheet, running: false });
  expect(workers[0]!.asked).toHaveLength(1);
});

test('a reading that is right asks nothing; one that is off asks for its causes', () => {
  workers[0]!.onmessage?.({ data: { sheet } });
  read(openOhms);
  expect(workers[0]!.asked).toHaveLength(1);
  read(3, '2026-05-01T09:01:00.000Z');
  expect(workers[0]!.asked[1]).toEqual({ wants: 'causes', off: [{ step, value: 3 }], all: [{ step, value: 3 }] });
  const causes = { [step]: [{ text: 'D1 is shorted', at: { cable: 'd1' }, fits: true }] };
  workers[0]!.onmessage?.({ data: { causes } });
  expect(powerUpStore.getState()).toMatchObject({ causes, running: false });
});

test('an edit of the drawing asks for a new sheet', () => {
  workers[0]!.onmessage?.({ data: { sheet } });
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 2 } });
  expect(workers[0]!.asked.map((r) => r.wants)).toEqual(['sheet', 'sheet']);
});

test('shown again, the sheet is still there and nothing is asked', () => {
  workers[0]!.onmessage?.({ data: { sheet } });
  end();
  expect(workers[0]!.ended).toBe(true);
  start();
  expect(workers).toHaveLength(1);
});

test('shown again with a reading off, the new worker gets the station before the question', () => {
  workers[0]!.onmessage?.({ data: { sheet } });
  end();
  read(3);
  start();
  expect(workers[1]!.asked.map((r) => r.wants)).toEqual(['sheet']);
  workers[1]!.onmessage?.({ data: { sheet } });
  expect(workers[1]!.asked.map((r) => r.wants)).toEqual(['sheet', 'causes']);
});

test('what can’t be worked out is said, and asked again after the next edit only', () => {
  workers[0]!.onerror?.({ message: 'out of memory', preventDefault() {} });
  expect(powerUpStore.getState().problem).toMatch(/out of memory/);
  expect(workers).toHaveLength(1);
  change({ type: 'updateCable', id: 'd1', set: { lengthM: 2 } });
  expect(workers[1]!.asked).toHaveLength(1);
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
