import { beforeEach, expect, test } from 'vitest';
import { createStation, hookupsOf, placeUnit } from '../../core/index.ts';
import { currentHookup, currentOverlay } from '../../renderer/store/current.ts';
import {
  change,
  currentStation,
  documentStore,
  goToStep,
  isEdited,
  markSaved,
  openDocument,
  redoStep,
  undoStep,
} from '../../renderer/store/document.ts';
import { keepMarked, pointAt, resetView, select, showPlaces, viewStore } from '../../renderer/store/view.ts';

beforeEach(() => openDocument(createStation('Test')));

test('a change is a step back and forth, and undoing it makes the document saved again', () => {
  change({ type: 'describe', set: { title: 'Other' } });
  expect(currentStation().title).toBe('Other');
  expect(isEdited(documentStore.getState())).toBe(true);
  undoStep();
  expect(currentStation().title).toBe('Test');
  expect(isEdited(documentStore.getState())).toBe(false);
  redoStep();
  expect(currentStation().title).toBe('Other');
});

test('a change that changes nothing is no step', () => {
  change({ type: 'describe', set: { title: 'Test' } });
  expect(documentStore.getState().history.past).toHaveLength(0);
});

test('what is typed while a save is being written is still unsaved afterwards', () => {
  change({ type: 'describe', set: { title: 'Written' } });
  const written = currentStation();
  change({ type: 'describe', set: { title: 'Typed meanwhile' } });
  markSaved(written, { name: 'test.station.json', place: null });
  expect(isEdited(documentStore.getState())).toBe(true);
  undoStep();
  expect(isEdited(documentStore.getState())).toBe(false);
});

test('another document starts without steps and counts as opened', () => {
  const { opened } = documentStore.getState();
  change({ type: 'describe', set: { title: 'Other' } });
  openDocument(createStation('Third'), { name: 'third.station.json', place: '/tmp/third.station.json' });
  expect(documentStore.getState()).toMatchObject({ opened: opened + 1, file: { name: 'third.station.json' } });
  expect(documentStore.getState().history.past).toEqual([]);
});

test('places are selected as the units and cables that they are on', () => {
  showPlaces([{ unit: 'receiver', port: 'mute' }, { unit: 'receiver' }, { cable: 'k4', end: 'a' }]);
  expect(viewStore.getState().selection).toEqual({ units: ['receiver'], cables: ['k4'], marks: [] });
  select({});
  expect(viewStore.getState().selection).toEqual({ units: [], cables: [], marks: [] });
});

test('a step of the list is gone to at once, and those after it wait to be done again', () => {
  for (const title of ['a', 'b', 'c']) change({ type: 'describe', set: { title } });
  goToStep(1);
  expect(currentStation().title).toBe('a');
  goToStep(3);
  expect(currentStation().title).toBe('c');
  goToStep(0);
  expect(currentStation().title).toBe('Test');
  expect(isEdited(documentStore.getState())).toBe(false);
  expect(documentStore.getState().history.future).toHaveLength(3);
});

test('what is pointed at is marked for as long, then again what is kept marked', () => {
  const marked = () => viewStore.getState().hovered;
  keepMarked([{ cable: 'r1' }]);
  expect(marked()).toEqual([{ cable: 'r1' }]);
  pointAt([{ unit: 'receiver' }]);
  expect(marked()).toEqual([{ unit: 'receiver' }]);
  pointAt([]);
  expect(marked()).toEqual([{ cable: 'r1' }]);
  keepMarked([]);
  expect(marked()).toEqual([]);
  keepMarked([{ cable: 'r1' }]);
  resetView();
  pointAt([]);
  expect(marked()).toEqual([]);
});

test('a hook-up that is gone gives way to the first there is', () => {
  change(placeUnit(currentStation(), 'paddle', { x: 0, y: 0 }));
  const station = currentStation();
  expect(currentHookup(station, { hookup: 'gone' })).toEqual(hookupsOf(station)[0]);
});

test('before the first survey there is nothing to show', () => {
  expect(currentOverlay(null, currentStation(), { hookup: null, control: null, moment: 'receive' })).toBeNull();
});
