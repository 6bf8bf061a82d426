import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStation, type Station, writeStation } from '../../core/index.ts';
import { questionStore } from '../../renderer/app/dialogs/questions.ts';
import { createSaving } from '../../renderer/app/document/create-saving.ts';
import type { FileChanged, FileStamp } from '../../renderer/shell/bridge.ts';
import type { StationFiles } from '../../renderer/shell/station-files.ts';
import {
  change,
  currentStation,
  type DocumentFile,
  documentStore,
  isEdited,
  openDocument,
  undoStep,
} from '../../renderer/store/document.ts';

const stamp = (modifiedMs: number): FileStamp => ({ modifiedMs, size: 1, inode: 1 });
const file: DocumentFile = { name: 'desk.station.json', place: '/desk.station.json', stamp: stamp(1) };
const retitle = (title: string) => change({ type: 'describe', set: { title } });
const edited = () => isEdited(documentStore.getState());
const named = (title: string): Station => ({ ...createStation(), title });

const saving = vi.fn<StationFiles['save']>();
const looking = vi.fn<StationFiles['look']>();
const unsaveable = vi.fn<Parameters<typeof createSaving>[1]>();
const { save: saveTo, look } = createSaving({ open: async () => null, save: saving, look: looking }, unsaveable);
const save = () => saveTo(false);

beforeEach(() => openDocument(named('Desk'), file));
afterEach(() => {
  saving.mockReset();
  looking.mockReset();
  unsaveable.mockReset();
});

/** Waits for the question that begins so, and gives this answer. */
async function answer(title: string, choice: string) {
  await vi.waitFor(() => expect(questionStore.getState().question?.title).toContain(title));
  const { question } = questionStore.getState();
  expect(question?.choices.map(({ id }) => id)).toContain(choice);
  question?.answer(choice);
  return question;
}

describe('saving', () => {
  it.each([
    { name: 'answered with a sentence', fails: () => saving.mockResolvedValueOnce({ error: 'The disk is full.' }) },
    { name: 'that throws', fails: () => saving.mockRejectedValueOnce(new Error('The disk is full.')) },
  ])('says a failure $name, and the document stays unsaved', async ({ fails }) => {
    retitle('Mine');
    fails();
    const saved = save();
    const question = await answer('Not saved', 'ok');
    expect(question?.text).toContain('The disk is full.');
    expect(await saved).toBe(false);
    expect(edited()).toBe(true);
    saving.mockResolvedValueOnce({ ...file, stamp: stamp(2) });
    expect(await save()).toBe(true);
    expect(edited()).toBe(false);
  });

  it('writes nothing over a file that could not be opened again, and says why', async () => {
    // Which no field of the screen allows: a fault of ours.
    retitle('two\nlines');
    expect(await save()).toBe(false);
    expect(saving).not.toHaveBeenCalled();
    expect(unsaveable.mock.calls[0]?.[1]).toEqual([expect.objectContaining({ place: 'title' })]);
    expect(edited()).toBe(true);
  });

  it('goes one save after the other, the later with the later text', async () => {
    const texts: string[] = [];
    let release = () => {};
    saving.mockImplementation(async ({ text }) => {
      texts.push(text);
      if (texts.length === 1) await new Promise<void>((resolve) => (release = resolve));
      return { ...file, stamp: stamp(2) };
    });
    retitle('First');
    const first = save();
    await vi.waitFor(() => expect(texts).toHaveLength(1));
    retitle('Second');
    const second = save();
    release();
    expect(await Promise.all([first, second])).toEqual([true, true]);
    expect(texts.map((text) => JSON.parse(text).title)).toEqual(['First', 'Second']);
    expect(edited()).toBe(false);
  });

  it('asked for twice at once is one save', async () => {
    saving.mockResolvedValue(null);
    expect(await Promise.all([save(), save()])).toEqual([false, false]);
    expect(saving).toHaveBeenCalledOnce();
  });
});

describe('a file that somebody else has written to', () => {
  const found = (station: Station, at = 2): FileChanged => ({ changed: stamp(at), text: writeStation(station) });

  it('is not asked about where the same document is in it', async () => {
    retitle('Mine');
    saving.mockResolvedValueOnce(found(named('Desk'))).mockResolvedValueOnce({ ...file, stamp: stamp(3) });
    expect(await save()).toBe(true);
    expect(saving.mock.lastCall?.[0].file?.stamp).toEqual(stamp(2));
  });

  it('tells what loading it would change, and keeps mine as unsaved', async () => {
    looking.mockResolvedValueOnce(found(named('Theirs')));
    const looked = look();
    const question = await answer('changed by somebody else', 'mine');
    expect(question?.lines).toEqual(['Station: title “Desk” → “Theirs”']);
    await looked;
    expect(currentStation().title).toBe('Desk');
    expect(edited()).toBe(true);
    expect(documentStore.getState().file?.stamp).toEqual(stamp(2));
    expect(saving).not.toHaveBeenCalled();
  });

  it('is loaded as a step, which undo takes back', async () => {
    retitle('Mine');
    looking.mockResolvedValueOnce(found(named('Theirs')));
    const looked = look();
    await answer('changed by somebody else', 'load');
    await looked;
    expect(currentStation().title).toBe('Theirs');
    expect(edited()).toBe(false);
    undoStep();
    expect(currentStation().title).toBe('Mine');
    expect(edited()).toBe(true);
  });

  it('can not be loaded where it is no station, and is left alone on cancel', async () => {
    saving.mockResolvedValueOnce({ changed: stamp(2), text: '{ "format": ' });
    const saved = save();
    const question = await answer('changed by somebody else', 'cancel');
    expect(question?.choices.map(({ id }) => id)).toEqual(['cancel', 'mine', 'elsewhere']);
    expect(question?.problems?.length).toBeGreaterThan(0);
    expect(await saved).toBe(false);
    expect(saving).toHaveBeenCalledOnce();
  });

  it('is asked about again where it changes while the question is open', async () => {
    saving.mockResolvedValueOnce(found(named('Theirs'))).mockResolvedValueOnce(found(named('Theirs again'), 3));
    saving.mockResolvedValueOnce({ ...file, stamp: stamp(4) });
    const saved = save();
    await answer('changed by somebody else', 'mine');
    await vi.waitFor(() => expect(questionStore.getState().question?.lines?.[0]).toContain('Theirs again'));
    await answer('changed by somebody else', 'mine');
    expect(await saved).toBe(true);
    expect(saving.mock.lastCall?.[0].file?.stamp).toEqual(stamp(3));
  });

  it('is saved anew where it is gone, after a sentence, and unsaved until then', async () => {
    looking.mockResolvedValueOnce({ changed: null, text: null });
    const looked = look();
    await answer('desk.station.json is gone', 'nothing');
    await looked;
    expect(edited()).toBe(true);
    expect(documentStore.getState().file?.stamp).toBeUndefined();
    saving.mockResolvedValueOnce({ changed: null, text: null }).mockResolvedValueOnce({ ...file, stamp: stamp(5) });
    const saved = save();
    await answer('desk.station.json is gone', 'over');
    expect(await saved).toBe(true);
    expect(edited()).toBe(false);
  });
});
