import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { failureIn } from '../../renderer/store/computed.ts';
import { change, currentStation, openDocument, undoStep } from '../../renderer/store/document.ts';
import { showResults } from '../../renderer/store/results.ts';
import {
  beginStudy,
  failureStore,
  type MixUpResult,
  mixUpStore,
  stopStudy,
  viewStudy,
} from '../../renderer/store/studies.ts';
import { calmMs } from '../../renderer/worker/keep-studied.ts';
import { runStudies } from '../../renderer/worker/run-studies.ts';
import type { Studied, StudyName, StudyRequest } from '../../renderer/worker/study-messages.ts';
import { sample } from '../stations/samples.ts';
import { HandThread } from './hand-thread.ts';

type Hand = HandThread<StudyRequest, Studied[StudyName]>;
const study: MixUpResult = {
  study: { tried: 7, harmless: 7, prevented: 0, mixUps: [] },
  scheme: { measures: [], exact: true, left: [] },
};
const report = { findings: [], cables: [], keydowns: [], overlays: [], rf: [], audio: [] } as never;
let threads: Hand[];
let end: () => void;

const surveyed = () => showResults({ is: 'fresh', value: report, of: currentStation(), at: 0 });
const edited = (lengthM: number) => {
  change({ type: 'updateCable', id: 'd1', set: { lengthM } });
  showResults({ is: 'passing', value: report, of: currentStation(), at: 0 });
};
const calm = () => vi.advanceTimersByTime(calmMs);
const state = () => mixUpStore.getState();
const newest = () => threads.at(-1)!;
const asked = () => threads.flatMap((t) => t.asked);
const look = () => {
  viewStudy(mixUpStore, true);
  surveyed();
  calm();
};

beforeEach(() => {
  vi.useFakeTimers();
  mixUpStore.setState(mixUpStore.getInitialState(), true);
  failureStore.setState(failureStore.getInitialState(), true);
  showResults({ is: 'computing' });
  openDocument(sample('hut'));
  threads = [];
  end = runStudies(() => {
    const thread: Hand = new HandThread();
    threads.push(thread);
    return thread as never;
  });
});

afterEach(() => {
  end();
  vi.useRealTimers();
});

test('nothing is tried while the list is out of view, nor before the drawing is surveyed and stands still', () => {
  surveyed();
  calm();
  expect(asked()).toEqual([]);
  expect(state().phase).toEqual({ is: 'resting' });
  showResults({ is: 'computing' });
  viewStudy(mixUpStore, true);
  calm();
  expect(state().phase).toEqual({ is: 'waiting' });
  expect(asked()).toEqual([]);
  surveyed();
  vi.advanceTimersByTime(calmMs - 1);
  expect(asked()).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(asked()).toEqual([{ wants: 'mixUps', station: currentStation() }]);
});

test('it tells how far it is, and what it came to', () => {
  look();
  newest().progress(3, 7);
  expect(state()).toMatchObject({ phase: { is: 'running', done: 3, of: 7 }, shown: { is: 'computing' } });
  newest().answer(study);
  expect(state()).toMatchObject({ phase: { is: 'resting' }, shown: { is: 'fresh', value: study } });
});

test('it goes on while another list is looked at', () => {
  look();
  viewStudy(mixUpStore, false);
  expect(newest().ended).toBe(false);
  newest().answer(study);
  expect(state().shown.is).toBe('fresh');
});

test('an edit ends it at once; it begins anew after the survey of the edit', () => {
  look();
  edited(3);
  expect(newest().ended).toBe(true);
  calm();
  expect(asked()).toHaveLength(1);
  surveyed();
  calm();
  expect(asked()).toHaveLength(2);
  expect(asked()[1]?.station).toBe(currentStation());
});

test('after an edit the list is old and says since when; undo has it back without a try', () => {
  look();
  newest().answer(study);
  edited(3);
  expect(state().shown).toMatchObject({ is: 'old', value: study, since: '“Change cable”' });
  undoStep();
  surveyed();
  calm();
  expect(state().shown).toMatchObject({ is: 'fresh', value: study });
  expect(asked()).toHaveLength(1);
});

test('the user stops it, and it stays stopped until it is begun again or the drawing changes', () => {
  look();
  newest().progress(3, 7);
  stopStudy(mixUpStore, currentStation());
  expect(newest().ended).toBe(true);
  expect(state()).toMatchObject({ phase: { is: 'stopped', done: 3, of: 7 }, shown: { is: 'computing' } });
  calm();
  expect(asked()).toHaveLength(1);
  beginStudy(mixUpStore);
  calm();
  expect(asked()).toHaveLength(2);
  stopStudy(mixUpStore, currentStation());
  edited(3);
  surveyed();
  calm();
  expect(asked()).toHaveLength(3);
});

test('what throws is told with its report, and not tried again and again', () => {
  look();
  newest().fail('too far');
  expect(state().shown.is).toBe('missing');
  expect(failureIn(state().shown)).toMatchObject({
    doing: 'trying what a hand could do wrong',
    station: currentStation(),
  });
  calm();
  expect(asked()).toHaveLength(1);
});

test('a study that tells of each step is not cut short, one that hangs is', () => {
  look();
  for (let i = 1; i <= 40; i++) {
    vi.advanceTimersByTime(20_000);
    newest().progress(i, 40);
  }
  expect(state().phase).toMatchObject({ is: 'running', done: 40 });
  vi.advanceTimersByTime(3600_000);
  expect(state().shown.is).toBe('missing');
  expect(newest().ended).toBe(true);
});

test('another document inherits nothing', () => {
  look();
  newest().answer(study);
  openDocument(sample('hill-table'));
  expect(state().shown).toEqual({ is: 'computing' });
});
