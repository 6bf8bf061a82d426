import { expect, it, vi } from 'vitest';
import type { Station, UnitKind } from '../../core/index.ts';
import { questionStore } from '../../renderer/app/dialogs/questions.ts';
import { addCopies } from '../../renderer/app/editing/edit-actions.ts';
import { currentStation, openDocument } from '../../renderer/store/document.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const ids = hut.units.map((unit) => unit.id);

it('units of another station come with their cables', () => {
  openDocument();
  addCopies('Paste', hut, ids);
  expect(currentStation().cables).toHaveLength(hut.cables.length);
});

it('units whose cables need a port that their kind has not here stay out, with a sentence and the places', async () => {
  const kind = hut.kinds.keyer as UnitKind;
  const other: Station = {
    ...hut,
    cables: [],
    kinds: { ...hut.kinds, keyer: { ...kind, ports: kind.ports.slice(0, 1) } },
  };
  openDocument({
    ...other,
    kinds: { ...other.kinds, keyer: { ...kind, elements: [], ports: kind.ports.slice(0, 1) } },
  });
  const before = currentStation();
  addCopies('Paste', hut, ids);
  expect(currentStation()).toBe(before);
  await vi.waitFor(() => expect(questionStore.getState().question?.title).toBe('Paste: not done'));
  expect(questionStore.getState().question?.problems?.[0]?.message).toMatch(/has no port/);
});
