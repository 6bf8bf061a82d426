import { beforeEach, expect, test } from 'vitest';
import { createStation, type Station, type SurveyReport } from '../../core/index.ts';
import { resultsStore } from '../../renderer/store/results.ts';
import { surveyAside } from '../../renderer/worker/survey-aside.ts';
import type { SurveyAnswer, SurveyWorker } from '../../renderer/worker/survey-runner.ts';

const report = { findings: [] } as unknown as SurveyReport;
const station = createStation('Aside');

class HandWorker implements SurveyWorker {
  readonly asked: Station[] = [];
  ended = false;
  onmessage: SurveyWorker['onmessage'] = null;
  onerror: SurveyWorker['onerror'] = null;
  postMessage(asked: Station) {
    this.asked.push(asked);
  }
  terminate() {
    this.ended = true;
  }
}

let worker: HandWorker;
let answers: SurveyAnswer[];
let end: () => void;

beforeEach(() => {
  worker = new HandWorker();
  answers = [];
  end = surveyAside(
    station,
    (answer) => answers.push(answer),
    () => worker,
  );
});

test('answers once for the station that was asked, ends its thread, and leaves the results alone', () => {
  const before = resultsStore.getState();
  expect(worker.asked).toEqual([station]);
  worker.onmessage?.({ data: { report } });
  expect(answers).toEqual([{ report }]);
  expect(worker.ended).toBe(true);
  expect(resultsStore.getState()).toBe(before);
});

test('says nothing once it is ended', () => {
  end();
  worker.onmessage?.({ data: { report } });
  expect(worker.ended).toBe(true);
  expect(answers).toEqual([]);
});

test('a thread that dies is a problem in words', () => {
  worker.onerror?.({ message: 'out of memory', preventDefault() {} });
  expect(answers).toEqual([{ problem: 'out of memory' }]);
  expect(worker.ended).toBe(true);
});
