import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { searchKinds, searchShelf, shelfGroups } from '../../core/catalog/search-shelf.ts';

const ids = (text: string) => searchShelf(text).map((item) => item.id);

describe('searching the shelf', () => {
  it.each([
    ['atu', 'manual-tuner'],
    ['tuner', 'manual-tuner'],
    ['T/R switch', 'changeover-by-line'],
    ['lightning', 'arrestor'],
    ['qrp', 'cw-transmitter-3w'],
    ['wall wart', 'plug-in-adapter'],
    ['lithium', 'lifepo4-battery'],
    ['SO-239 switch', 'coax-switch'],
    ['dummy', 'dummy-load-5w'],
    ['termination 100', 'dummy-load-100w'],
    ['phones', 'headphones'],
    ['12 V', 'fused-strip'],
    ['psu 25', 'switch-mode-supply'],
    ['center negative', 'receiver-with-mute'],
    ['MORSE', 'straight-key'],
    ['ground', 'earth-bar'],
  ])('“%s” finds %s', (text, id) => {
    expect(ids(text)).toContain(id);
  });

  it('puts what is called so first', () => {
    expect(ids('keyer')[0]).toBe('keyer');
    expect(ids('receiver').slice(0, 2)).toEqual(['receiver-with-mute', 'receiver-without-mute']);
  });

  it('shows all for an empty text and nothing for nonsense', () => {
    expect(ids('  ')).toEqual(shelf.map((item) => item.id));
    expect(ids('xyzzy')).toEqual([]);
  });

  it('has every kind under one heading, and no empty heading', () => {
    expect(shelfGroups.flatMap((group) => group.kinds)).toHaveLength(shelf.length);
    expect(shelfGroups.every((group) => group.kinds.length > 0)).toBe(true);
  });
});

describe('searching kinds of one’s own', () => {
  const connector = { ...connectors['bnc-jack']!, name: 'bayonet of my own' };
  const kind = { ...shelf[0]!.kind, name: 'Box, grey', words: ['junk sale'] };
  const ports = kind.ports.map((port) => ({ ...port, connector: 'mine' }));
  const own = [{ id: 'own-box', kind: { ...kind, ports }, connectors: { mine: connector } }];
  it.each([
    ['', 1],
    ['grey', 1],
    ['junk', 1],
    ['bayonet', 1],
    ['power bayonet', 1],
    ['green', 0],
  ])('“%s” finds %d', (text, count) => {
    expect(searchKinds(own, text)).toHaveLength(count);
  });
});
