import { afterEach, beforeEach, expect, test } from 'vitest';
import { createStation, type Station, type SurveyReport } from '../../core/index.ts';
import { change, currentStation, openDocument } from '../../renderer/store/document.ts';
import { resultsStore } from '../../renderer/store/results.ts';
import { runSurveys, type SurveyWorker } from '../../renderer/worker/survey-runner.ts';

const report: SurveyReport = {
  findings: [],
  cables: [],
  budget: { supplies: [], loads: [], branches: [], ways: [], fuses: [], wires: [], batteries: [] },
  keydowns: [],
  overlays: [],
  rf: [],
  audio: [],
};

class HandWorker implements SurveyWorker {
  readonly asked: Station[] = [];
  ended = false;
  onmessage: SurveyWorker['onmessage'] = null;
  onerror: SurveyWorker['onerror'] = null;
  postMessage(station: Station) {
    this.asked.push(station);
  }
  terminate() {
    this.ended = true;
  }
}

let workers: HandWorker[];
let end: () => void;
const retitle = (title: string) => change({ type: 'describe', set: { title } });

beforeEach(() => {
  resultsStore.setState({ report: null, station: null, running: false, problem: null });
  openDocument(createStation('First'));
  workers = [];
  end = runSurveys(() => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker;
  });
});

afterEach(() => end());

test('the document is surveyed at once, and its report is kept with it', () => {
  expect(workers[0]!.asked).toEqual([currentStation()]);
  expect(resultsStore.getState().running).toBe(true);
  workers[0]!.onmessage?.({ data: { report } });
  expect(resultsStore.getState()).toMatchObject({ report, running: false, station: currentStation() });
});

test('of many edits during a survey only the newest is surveyed next', () => {
  for (const title of ['a', 'b', 'c']) retitle(title);
  expect(workers[0]!.asked).toHaveLength(1);
  workers[0]!.onmessage?.({ data: { report } });
  expect(workers[0]!.asked.map((s) => s.title)).toEqual(['First', 'c']);
  expect(resultsStore.getState().running).toBe(true);
});

test('a survey that fails says so, keeps the last report and is not repeated', () => {
  workers[0]!.onmessage?.({ data: { report } });
  retitle('bad');
  workers[0]!.onmessage?.({ data: { problem: 'no contact @joint' } });
  expect(resultsStore.getState().report).toBe(report);
  expect(resultsStore.getState().problem).toContain('no contact @joint');
  expect(workers[0]!.asked).toHaveLength(2);
  retitle('good');
  workers[0]!.onmessage?.({ data: { report } });
  expect(resultsStore.getState().problem).toBeNull();
});

test('a worker that dies is replaced', () => {
  workers[0]!.onerror?.({ message: 'out of memory', preventDefault() {} });
  expect(workers[0]!.ended).toBe(true);
  expect(resultsStore.getState().problem).toContain('out of memory');
  retitle('next');
  expect(workers[1]!.asked.map((s) => s.title)).toEqual(['next']);
});
