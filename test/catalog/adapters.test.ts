import { describe, expect, it } from 'vitest';
import { adapterChain, adapters } from '../../core/catalog/adapters.ts';
import { connectors } from '../../core/catalog/connectors.ts';

describe.each(Object.entries(adapters))('adapter %s', (id, adapter) => {
  it('has two sides that mate with something, a name and a source', () => {
    for (const side of [adapter.a, adapter.b]) expect(connectors[side]?.mates.length, side).toBeGreaterThan(0);
    expect(adapter.name).not.toBe('');
    expect(adapter.source).not.toBe('');
    expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });
});

describe('the chain of adapters between a plug and a jack', () => {
  it.each([
    { plug: 'bnc-plug', jack: 'bnc-jack', expect: [] },
    { plug: 'phono-plug', jack: 'bnc-jack', expect: ['phono-to-bnc'] },
    { plug: 'bnc-plug', jack: 'phono-jack', expect: ['bnc-to-phono'] },
    { plug: 'bnc-plug', jack: 'uhf-jack', expect: ['bnc-to-uhf'] },
    { plug: 'phono-plug', jack: 'uhf-jack', expect: ['phono-to-bnc', 'bnc-to-uhf'] },
    { plug: 'stereo-35-plug', jack: 'stereo-635-jack', expect: ['stereo-35-to-635'] },
    { plug: 'barrel-25-plug', jack: 'barrel-21-jack', expect: ['barrel-25-to-21'] },
    { plug: 'two-pole-30', jack: 'barrel-21-jack', expect: ['two-pole-to-barrel-21'] },
    { plug: 'uhf-plug', jack: 'uhf-plug', expect: ['uhf-joint'] },
    { plug: 'earth-lug', jack: 'bnc-jack', expect: null },
    { plug: 'usb-a-plug', jack: 'rj45-jack', expect: null },
  ])('$plug to $jack', ({ plug, jack, expect: chain }) => {
    expect(adapterChain(connectors, plug, jack)).toEqual(chain);
  });

  it('goes no further than its limit', () => {
    expect(adapterChain(connectors, 'phono-plug', 'uhf-jack', 1)).toBeNull();
    expect(adapterChain(connectors, 'f-plug', 'phono-jack', 1)).toBeNull();
    expect(adapterChain(connectors, 'f-plug', 'phono-jack', 2)).toEqual(['f-to-bnc', 'bnc-to-phono']);
  });

  it('takes adapter sides from the catalogue where the document has only its own connectors', () => {
    const own = { 'phono-plug': connectors['phono-plug']!, 'bnc-jack': connectors['bnc-jack']! };
    expect(adapterChain(own, 'phono-plug', 'bnc-jack')).toEqual(['phono-to-bnc']);
  });
});
