import { describe, expect, it } from 'vitest';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { findNewPartners, findPartners } from '../../core/catalog/laying/partners.ts';
import { edit } from '../../core/station/edit.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const bare: Station = { ...hut, cables: [] };
const names = (station: Station, unit: string, port: string) =>
  findPartners(station, { unit, port }).map(({ ref }) => `${ref.unit}.${ref.port}`);

describe('partners of a port on the drawing', () => {
  // Common practice: what each jack of such a station is for.
  it.each([
    ['supply', 'out', 'strip.input'],
    ['transmitter', 'antenna', 'changeover.transmitter'],
    ['changeover', 'receiver', 'receiver.antenna'],
    ['changeover', 'mute', 'receiver.mute'],
    ['paddle', 'out', 'keyer.paddle'],
    ['receiver', 'phones', 'phones.plug'],
    ['changeover', 'key', 'transmitter.key'],
    ['receiver', 'power', 'strip.one'],
  ])('%s.%s: first of all %s.%s', (unit, port, first) => {
    expect(names(bare, unit, port)[0]).toBe(first);
  });

  it('names every other port once, and what does not fit last', () => {
    const found = findPartners(bare, { unit: 'transmitter', port: 'antenna' });
    const ports = bare.units.flatMap((u) => bare.kinds[u.kind]?.ports ?? []);
    expect(found).toHaveLength(ports.length - 1);
    const fits = found.map((p) => p.verdict.fit);
    expect(fits.lastIndexOf('mates')).toBeLessThan(fits.indexOf('none'));
  });

  it('names free ports before those that have a cable', () => {
    const taken = findPartners(hut, { unit: 'receiver', port: 'power' }).filter((p) => p.verdict.fit === 'mates');
    const outlets = taken.filter((p) => p.ref.unit === 'strip' && p.ref.port !== 'input');
    expect(outlets[0]).toMatchObject({ ref: { port: 'four' }, taken: false });
    expect(outlets.slice(1).every((p) => p.taken)).toBe(true);
    const unplugged = edit(hut, { type: 'removeCables', ids: hut.cables.map((c) => c.id) });
    expect(findPartners(unplugged, { unit: 'receiver', port: 'power' }).some((p) => p.taken)).toBe(false);
  });
});

describe('partners on the shelf', () => {
  const kinds = (unit: string, port: string) => findNewPartners(bare, { unit, port }, shelf).map((p) => p.kind.id);
  it('a paddle goes to what is keyed by one, never to a supply', () => {
    expect(kinds('paddle', 'out').slice(0, 8)).toContain('keyer');
    expect(kinds('paddle', 'out')).not.toContain('bench-supply');
  });
  it('a supply feeds loads and strips, not another supply', () => {
    const found = kinds('supply', 'out');
    expect(found).toContain('fused-strip');
    expect(found).toContain('receiver-with-mute');
    expect(found).not.toContain('switch-mode-supply');
  });
  it('offers the port that the cable would go to', () => {
    const strip = findNewPartners(bare, { unit: 'supply', port: 'out' }, shelf).find(
      (p) => p.kind.id === 'fused-strip',
    );
    expect(strip?.port.id).toBe('input');
  });
});
