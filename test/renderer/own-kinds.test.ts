import { beforeEach, describe, expect, it, vi } from 'vitest';
import { connectors, shelf } from '../../core/index.ts';
import {
  dropKind,
  findOwnKind,
  forgetUnreadable,
  freeKindId,
  keepKind,
  loadOwnKinds,
  ownKindsStore,
} from '../../renderer/store/own-kinds.ts';

const kept = new Map<string, string>();
let isFull = false;
const own = (id: string, name: string) => {
  const kind = { ...shelf[0]!.kind, name };
  const used = kind.ports.map((p) => p.connector);
  return { id, kind, connectors: Object.fromEntries(used.map((c) => [c, connectors[c]!])) };
};
const names = () => ownKindsStore.getState().kinds.map((k) => k.kind.name);

beforeEach(() => {
  kept.clear();
  isFull = false;
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => {
      if (isFull) throw new Error('full');
      kept.set(key, value);
    },
    removeItem: (key: string) => kept.delete(key),
  });
  vi.stubGlobal('window', { addEventListener: () => {} });
  loadOwnKinds();
});

describe('kinds of one’s own', () => {
  it('are there again after a reload', () => {
    keepKind(own('own-box', 'Box'));
    keepKind(own('own-case', 'Case'));
    keepKind(own('own-box', 'Bigger box'));
    const before = ownKindsStore.getState().kinds;
    loadOwnKinds();
    expect(names()).toEqual(['Bigger box', 'Case']);
    expect(ownKindsStore.getState().kinds).toEqual(before);
    dropKind('own-box');
    loadOwnKinds();
    expect(names()).toEqual(['Case']);
    expect(findOwnKind('own-box')).toBeUndefined();
  });

  it('get ids that no kind of the shelf has', () => {
    keepKind(own('own-box-blue', 'Box, blue'));
    expect(freeKindId('Box, blue', [])).toBe('own-box-blue-2');
    expect(freeKindId('Box, blue', ['own-box-blue-2'])).toBe('own-box-blue-3');
    expect(freeKindId('Größe 3 Ω', [])).toBe('own-gro-e-3');
    expect(freeKindId('箱', [])).toBe('own-unit');
  });

  it('that can be read stay when another one can’t, and its text is kept until the user has let go of it', () => {
    keepKind(own('own-box', 'Box'));
    const [row] = JSON.parse(kept.get('stationwright.kinds')!);
    const text = JSON.stringify([row, { id: 'own-bad', file: { format: 'nonsense' } }]);
    kept.set('stationwright.kinds', text);
    loadOwnKinds();
    expect(names()).toEqual(['Box']);
    expect(ownKindsStore.getState().unreadable).toBe(text);
    keepKind(own('own-case', 'Case'));
    loadOwnKinds();
    expect(names()).toEqual(['Box', 'Case']);
    expect(ownKindsStore.getState().unreadable).toBe(text);
    forgetUnreadable();
    loadOwnKinds();
    expect(ownKindsStore.getState().unreadable).toBeNull();
  });

  it.each(['', '{', '{"a": 1}', '[1, null]', '"text"'])('come to nothing, and are kept as text, from “%s”', (text) => {
    kept.set('stationwright.kinds', text);
    loadOwnKinds();
    expect(names()).toEqual([]);
    expect(ownKindsStore.getState().unreadable).toBe(text);
  });

  it('stay on the shelf of a window whose browser keeps no more, and it says so', () => {
    isFull = true;
    keepKind(own('own-box', 'Box'));
    expect(names()).toEqual(['Box']);
    expect(ownKindsStore.getState().problem).toMatch(/export your kinds/);
  });
});
