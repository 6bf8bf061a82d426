import { beforeEach, expect, test } from 'vitest';
import { createStation, type Finding } from '../../core/index.ts';
import {
  findingsView,
  forgetReason,
  showAll,
  showOnly,
  toggleSeverity,
  typeReason,
  unfold,
} from '../../renderer/stages/check/findings-view.ts';
import { change, openDocument } from '../../renderer/store/document.ts';

const view = () => findingsView.getState();
const finding = { id: 'power/test:message@meter' } as Finding;

beforeEach(() => openDocument(createStation('Test')));

test('a severity is hidden and shown again; showing all takes every filter away, and nothing else', () => {
  unfold(finding.id);
  toggleSeverity('note');
  toggleSeverity('fault');
  toggleSeverity('note');
  expect(view().hidden).toEqual(['fault']);
  showOnly({ units: ['meter'], cables: [], by: 'name' });
  showAll();
  expect(view()).toMatchObject({ hidden: [], about: null, unfolded: finding.id });
});

test('a reason that is typed is kept by finding until it is forgotten', () => {
  typeReason(finding, 'lent');
  typeReason({ ...finding, id: 'other' }, 'old');
  typeReason(finding, 'lent out');
  forgetReason('other');
  expect(view().typed).toEqual({ [finding.id]: { finding, text: 'lent out' } });
});

test('edits leave the view alone; another document starts with a fresh one', () => {
  typeReason(finding, 'lent');
  toggleSeverity('note');
  unfold(finding.id);
  const before = view();
  change({ type: 'describe', set: { title: 'Other' } });
  expect(view()).toBe(before);
  openDocument(createStation('Next'));
  expect(view()).toEqual({ unfolded: null, hidden: [], about: null, typed: {} });
});
