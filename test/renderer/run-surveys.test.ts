import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createStation, type Finding, type Station, type SurveyReport, troubleReport } from '../../core/index.ts';
import { failureIn } from '../../renderer/store/computed.ts';
import { change, currentStation, openDocument, redoStep, undoStep } from '../../renderer/store/document.ts';
import { resultsStore, showResults } from '../../renderer/store/results.ts';
import { surveyLimitMs } from '../../renderer/worker/limits.ts';
import { runSurveys } from '../../renderer/worker/run-surveys.ts';
import { HandThread } from './hand-thread.ts';

const reportOf = (): SurveyReport => ({
  findings: [],
  cables: [],
  budget: { supplies: [], loads: [], branches: [], ways: [], fuses: [], wires: [], batteries: [] },
  keydowns: [],
  overlays: [],
  rf: [],
  audio: [],
});

let threads: HandThread<Station, SurveyReport>[];
let explaining: HandThread<Station, readonly Finding[]>[];
let end: () => void;

function opened<T>(list: T[], thread: T): T {
  list.push(thread);
  return thread;
}

const danger = (id: string, causedBy?: string): Finding => ({
  id,
  rule: 'power/over-voltage',
  severity: 'danger',
  title: 'Too much',
  message: 'Too much.',
  why: '',
  advice: '',
  at: [],
  values: {},
  hookups: [],
  moments: [],
  ...(causedBy !== undefined && { causedBy }),
});
const retitle = (title: string) => change({ type: 'describe', set: { title } });
const shown = () => resultsStore.getState();
const newest = () => threads.at(-1)!;
const titles = () => threads.flatMap((t) => t.asked.map((s) => s.title));
/** A survey that comes back as it is wanted. */
const survey = (report = reportOf()) => {
  newest().answer(report);
  return report;
};

beforeEach(() => {
  vi.useFakeTimers();
  showResults({ is: 'computing' });
  openDocument(createStation('First'));
  threads = [];
  explaining = [];
  end = runSurveys(
    () => opened(threads, new HandThread<Station, SurveyReport>()),
    () => opened(explaining, new HandThread<Station, readonly Finding[]>()),
  );
});

afterEach(() => {
  end();
  vi.useRealTimers();
});

test('the document is surveyed at once; before its report is there nothing is, and it says so', () => {
  expect(threads[0]!.asked).toEqual([currentStation()]);
  expect(shown()).toEqual({ is: 'computing' });
  vi.advanceTimersByTime(5000);
  expect(shown()).toEqual({ is: 'computing' });
  const report = survey();
  expect(shown()).toMatchObject({ is: 'fresh', value: report, of: currentStation() });
});

test('of many edits during a survey only the newest is surveyed next', () => {
  for (const title of ['a', 'b', 'c']) retitle(title);
  expect(titles()).toEqual(['First']);
  survey();
  expect(titles()).toEqual(['First', 'c']);
  expect(threads).toHaveLength(1);
});

test('after an edit the last report stands in without a word, and is called old once the next takes long', () => {
  const report = survey();
  retitle('next');
  expect(shown()).toMatchObject({ is: 'passing', value: report });
  vi.advanceTimersByTime(999);
  expect(shown().is).toBe('passing');
  vi.advanceTimersByTime(1);
  expect(shown()).toMatchObject({ is: 'old', value: report, since: '“Change description”', failure: null });
  const next = survey();
  expect(shown()).toMatchObject({ is: 'fresh', value: next });
});

test('a survey that fails marks the last report as old, names the step since which, and is not repeated', () => {
  const report = survey();
  retitle('bad');
  newest().fail('too much recursion');
  expect(shown()).toMatchObject({ is: 'old', value: report, since: '“Change description”' });
  expect(failureIn(shown())?.words).toBe('That is a fault of the program, not of your drawing: too much recursion.');
  expect(titles()).toEqual(['First', 'bad']);
});

test('the failure keeps its stack and its station for a report', () => {
  retitle('bad');
  survey();
  newest().fail('too much recursion');
  const failure = failureIn(shown());
  if (!failure) throw new Error('no failure');
  const text = troubleReport({ ...failure, where: 'a test' });
  expect(text).toContain('While surveying the station, on a test.');
  expect(text).toContain('RangeError: too much recursion\n    at spread');
  expect(text).toContain('"title": "bad"');
});

test('a document that never was computed has no report, not an empty one', () => {
  newest().fail('no');
  expect(shown()).toMatchObject({ is: 'missing', failure: { words: expect.stringContaining('no') } });
  expect(shown()).not.toHaveProperty('value');
});

test('what was said of one document is not said of the next, not even as old', () => {
  survey();
  openDocument(createStation('Second'));
  expect(shown()).toEqual({ is: 'computing' });
  newest().fail('no');
  expect(shown().is).toBe('missing');
});

test('marks stay from edit to edit until a report is there', () => {
  survey();
  retitle('bad');
  newest().fail('no');
  retitle('worse');
  expect(shown()).toMatchObject({ is: 'old', failure: { station: { title: 'bad' } } });
  newest().fail('no again');
  expect(shown()).toMatchObject({ is: 'old', failure: { station: { title: 'worse' } } });
  retitle('good');
  survey();
  expect(shown().is).toBe('fresh');
});

test('undo after a failure has its report at once, and redo its failure', () => {
  const report = survey();
  retitle('bad');
  newest().fail('no');
  undoStep();
  expect(shown()).toMatchObject({ is: 'fresh', value: report });
  redoStep();
  expect(shown()).toMatchObject({ is: 'old', failure: { words: expect.stringContaining('no') } });
  expect(titles()).toEqual(['First', 'bad']);
});

test('the last good report outlasts any number of failures', () => {
  const report = survey();
  for (let i = 0; i < 20; i++) {
    retitle(`bad ${i}`);
    newest().fail('no');
  }
  expect(shown()).toMatchObject({ is: 'old', value: report });
});

test('a survey that never ends is ended with its thread after the limit, says so, and the next edit starts afresh', () => {
  const report = survey();
  retitle('endless');
  const limitMs = surveyLimitMs(currentStation());
  vi.advanceTimersByTime(limitMs - 1000);
  expect(threads[0]!.ended).toBe(false);
  vi.advanceTimersByTime(1000);
  expect(threads[0]!.ended).toBe(true);
  expect(shown()).toMatchObject({ is: 'old', value: report });
  expect(failureIn(shown())?.words).toBe(`It took longer than ${limitMs / 1000} s and was stopped.`);
  retitle('good');
  expect(threads[1]!.asked.map((s) => s.title)).toEqual(['good']);
  survey();
  expect(shown().is).toBe('fresh');
});

test('a second after an edit a hung survey is ended for the newer document', () => {
  survey();
  retitle('endless');
  vi.advanceTimersByTime(5000);
  retitle('good');
  vi.advanceTimersByTime(1);
  expect(threads[0]!.ended).toBe(true);
  expect(threads[1]!.asked.map((s) => s.title)).toEqual(['good']);
  survey();
  expect(shown()).toMatchObject({ is: 'fresh', of: { title: 'good' } });
});

test('a hung survey keeps nobody from what undo brings back, and is ended', () => {
  const report = survey();
  retitle('endless');
  undoStep();
  expect(shown()).toMatchObject({ is: 'fresh', value: report });
  vi.advanceTimersByTime(1000);
  expect(threads[0]!.ended).toBe(true);
  expect(shown()).toMatchObject({ is: 'fresh', value: report });
});

test('surveys that take long, and edits that follow faster, still give a report', () => {
  const tookMs = 4000;
  let done = 0;
  for (let ms = 0; ms < 60_000; ms += 500) {
    retitle(`at ${ms}`);
    const thread = newest();
    const asked = thread.asked.length;
    // Each survey would need four seconds, and each half second another edit comes.
    setTimeout(() => {
      if (thread.ended || thread.asked.length !== asked) return;
      thread.answer(reportOf());
      done++;
    }, tookMs);
    vi.advanceTimersByTime(500);
  }
  expect(done).toBeGreaterThan(3);
});

test('a thread that dies is replaced', () => {
  newest().breakDown('out of memory');
  expect(threads[0]!.ended).toBe(true);
  expect(failureIn(shown())?.words).toContain('out of memory');
  retitle('next');
  expect(threads[1]!.asked.map((s) => s.title)).toEqual(['next']);
});

test('where undo leads to what was never surveyed, the step that was undone is named', () => {
  survey();
  retitle('a');
  retitle('b');
  newest().fail('no');
  expect(titles()).toEqual(['First', 'a', 'b']);
  const report = survey();
  expect(shown()).toMatchObject({ is: 'fresh', value: report });
  retitle('c');
  survey();
  undoStep();
  expect(shown()).toMatchObject({ is: 'fresh', value: report });
  undoStep();
  expect(shown()).toMatchObject({
    is: 'old',
    since: '“Change description” was undone',
    failure: { station: { title: 'a' } },
  });
});

test('what is wrong is shown at once, and what a hand did on top of it when that is found; undo brings it back', () => {
  const report = survey({ ...reportOf(), findings: [danger('one')] });
  expect(shown()).toMatchObject({ is: 'fresh', value: report });
  const wrong = currentStation();
  expect(explaining[0]!.asked).toEqual([wrong]);
  const explained = [danger('act'), danger('one', 'act')];
  explaining[0]!.answer(explained);
  expect(shown()).toMatchObject({ is: 'fresh', value: { findings: explained }, of: wrong });
  retitle('next');
  survey();
  undoStep();
  expect(shown()).toMatchObject({ is: 'fresh', value: { findings: explained } });
  expect(explaining.flatMap((t) => t.asked)).toHaveLength(1);
});

test('a search for what a hand did ends with an edit, and begins for what is wrong alone', () => {
  survey({ ...reportOf(), findings: [danger('one')] });
  retitle('right');
  expect(explaining[0]!.ended).toBe(true);
  survey();
  expect(explaining).toHaveLength(1);
  expect(shown()).toMatchObject({ is: 'fresh', value: { findings: [] } });
});

test('where that search comes to nothing, what is wrong stays as it is shown', () => {
  const report = survey({ ...reportOf(), findings: [danger('one')] });
  explaining[0]!.fail('broken');
  expect(shown()).toMatchObject({ is: 'fresh', value: report });
});
