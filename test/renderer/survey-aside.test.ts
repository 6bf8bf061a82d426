import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createStation, type Station, type SurveyReport } from '../../core/index.ts';
import { resultsStore } from '../../renderer/store/results.ts';
import { surveyLimitMs } from '../../renderer/worker/limits.ts';
import { surveyAside } from '../../renderer/worker/survey-aside.ts';
import { type Reply, TookTooLong } from '../../renderer/worker/watched-thread.ts';
import { HandThread } from './hand-thread.ts';

const report = { findings: [] } as unknown as SurveyReport;
const station = createStation('Aside');

let worker: HandThread<Station, SurveyReport>;
let answers: Reply<SurveyReport>[];
let end: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  worker = new HandThread();
  answers = [];
  end = surveyAside(
    station,
    (answer) => answers.push(answer),
    () => worker,
  );
});

afterEach(() => {
  vi.useRealTimers();
});

test('answers once for the station that was asked, ends its thread, and leaves the results alone', () => {
  const before = resultsStore.getState();
  expect(worker.asked).toEqual([station]);
  worker.answer(report);
  expect(answers).toEqual([{ answer: report }]);
  expect(worker.ended).toBe(true);
  expect(resultsStore.getState()).toBe(before);
});

test('says nothing once it is ended', () => {
  end();
  worker.answer(report);
  expect(worker.ended).toBe(true);
  expect(answers).toEqual([]);
});

test('a thread that dies is a problem in words', () => {
  worker.breakDown('out of memory');
  expect(answers).toEqual([{ error: new Error('out of memory') }]);
  expect(worker.ended).toBe(true);
});

test('one that never ends is ended after its limit, in words', () => {
  vi.advanceTimersByTime(surveyLimitMs(station));
  expect(worker.ended).toBe(true);
  expect(answers).toEqual([{ error: new TookTooLong(surveyLimitMs(station)) }]);
});
