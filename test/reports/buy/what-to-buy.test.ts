import { describe, expect, it } from 'vitest';
import type { BuyRow } from '../../../core/reports/buy/buy-row.ts';
import { whatToBuy } from '../../../core/reports/buy/what-to-buy.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Cable, Station } from '../../../core/station/schema/schema.ts';
import { sample } from '../../stations/samples.ts';

const all = { leaveOutDone: false };
const counts = (rows: readonly BuyRow[]) => Object.fromEntries(rows.map((row) => [row.what, row.count]));
const set = (station: Station, id: string, fields: Partial<Omit<Cable, 'id'>>) =>
  edit(station, { type: 'updateCable', id, set: fields });

describe('what to buy', () => {
  it('for the hut is what was counted by hand', () =>
    expect(counts(whatToBuy(sample('hut'), all))).toEqual({
      // 1.5 m and a lug at each end, 1.52 m; a tenth more is 1.672 m.
      'earth wire, 16 mm²': 1.7,
      // 0.64 R1, 0.65 R2, 0.64 R3, 0.65 R4, 0.65 R5, 2.05 R6, 4.05 R7: 9.33 m, with a tenth 10.263 m.
      'RG-58': 10.3,
      // 0.84 K2, 0.64 K3, 0.64 K4: 2.12 m, 2.332 m.
      'screened lead, one core, keying': 2.4,
      // 0.84 K1: 0.924 m.
      'screened lead, two cores, keying': 1,
      // 0.82 D1: 0.902 m.
      'two-core lead, AWG 14': 1,
      // 0.83 D2, 0.83 D3, 1.03 D4: 2.69 m, 2.959 m.
      'two-core lead, AWG 20': 3,
      // K2 at the keyer, K3 at both ends.
      '3.5 mm mono plug': 3,
      // K1 at both ends.
      '3.5 mm stereo plug': 2,
      // D2, D3, D4 at the units.
      'barrel plug 5.5/2.1': 3,
      // R1 both, R2, R3, R4 at the dummy load.
      'BNC plug': 5,
      'earth lug': 2,
      // R3 at the receiver, K2 at the changeover, K4 at both ends.
      'phono plug': 4,
      // R2, R4 at the meter; R5, R6, R7 at both ends.
      'PL-259 plug': 8,
      // Two at each end of D1.
      'ring terminals': 4,
      // D2, D3, D4 at the strip.
      'two-pole, 15 A': 3,
      // One in the strip and one to spare of each.
      '1 A blade': 2,
      '2 A blade': 2,
      '3 A blade': 2,
      '5 A blade': 2,
      // 4 at D1, 6 at K1, 10 mm each: 0.1 m, with a tenth 0.11 m.
      'heat-shrink over cores': 0.2,
      // Both ends of 16 cables, 30 mm each: 0.96 m, 1.056 m.
      'heat-shrink over the cable': 1.1,
      'extension lead, 6.35 mm stereo, 3.00 m': 1,
    }));
  it('for the first draft is what was counted by hand', () =>
    expect(counts(whatToBuy(sample('hut-first-draft'), all))).toEqual({
      'earth wire, 16 mm²': 1.7,
      // As in the hut without R4: 8.68 m, 9.548 m. R3 has a phono plug on both ends, which take 20 mm as BNC does.
      'RG-58': 9.6,
      // 0.84 K2, 0.64 K3: 1.48 m, 1.628 m.
      'screened lead, one core, keying': 1.7,
      'screened lead, two cores, keying': 1,
      'two-core lead, AWG 14': 1,
      // 0.83 D2, 1.03 D4: 1.86 m, 2.046 m.
      'two-core lead, AWG 20': 2.1,
      // 0.83 D3: 0.913 m.
      'two-core lead, AWG 24': 1,
      '3.5 mm mono plug': 3,
      '3.5 mm stereo plug': 2,
      'barrel plug 5.5/2.1': 3,
      // R1 both, R2.
      'BNC plug': 3,
      'earth lug': 2,
      // R3 both, K2.
      'phono plug': 3,
      // R2, R5 both, R6 both, R7 both.
      'PL-259 plug': 7,
      'ring terminals': 4,
      'two-pole, 15 A': 3,
      // R3 goes into a BNC jack of the changeover.
      'phono jack to BNC plug': 1,
      '1 A blade': 2,
      '3 A blade': 2,
      '5 A blade': 2,
      '10 A blade': 2,
      'heat-shrink over cores': 0.2,
      // 14 cables: 0.84 m, 0.924 m.
      'heat-shrink over the cable': 1,
      'extension lead, 6.35 mm mono, 3.00 m': 1,
    }));
  it('takes the station’s own allowance', () => {
    const hut = sample('hut');
    const generous = edit(hut, { type: 'describe', set: { settings: { ...hut.settings, cableAllowance: 0.5 } } });
    // 9.33 m and half as much: 13.995 m.
    expect(counts(whatToBuy(generous, all))['RG-58']).toBe(14);
    const exact = edit(hut, { type: 'describe', set: { settings: { ...hut.settings, cableAllowance: 0 } } });
    expect(counts(whatToBuy(exact, all))['RG-58']).toBe(9.4);
  });
  it('fuses of one rating in leads and units are counted together, with one to spare, and a holder for each lead', () => {
    const fuse = { amps: 3, family: 'blade', atM: 0.1 } as const;
    const fused = set(set(sample('hut'), 'd1', { fuse }), 'd3', { fuse: { ...fuse, family: 'glass-slow', amps: 2 } });
    const rows = whatToBuy(fused, all);
    expect(rows.find((row) => row.what === '3 A blade')).toMatchObject({
      used: 2,
      count: 3,
      for: ['D1', 'Fused strip'],
    });
    expect(counts(rows)).toMatchObject({
      '2 A blade': 2,
      '2 A T 5 × 20': 2,
      'in-line holder for a blade fuse': 1,
      'in-line holder for a 5 × 20 mm fuse': 1,
    });
  });
  it('a ring for each jack that has one and for each plug in it', () => {
    const ring = (station: Station, id: string, rings: Station['units'][number]['rings']) =>
      edit(station, { type: 'updateUnit', id, set: { rings: rings as NonNullable<typeof rings> } });
    const ringed = ring(ring(sample('hut'), 'receiver', { power: 'BU' }), 'strip', { three: 'BU', four: 'OG' });
    const rows = whatToBuy(ringed, all).filter(({ group }) => group === 'ring');
    expect(rows.map(({ what, count, unit, for: whom }) => [what, count, unit, whom])).toEqual([
      // D4 lies between two blue jacks; in the strip's fourth outlet is no plug.
      ['colour ring, blue (BU)', 4, 'pieces', ['Fused strip', 'Receiver']],
      ['colour ring, orange (OG)', 1, 'pieces', ['Fused strip']],
    ]);
  });
  it('a cable in one hook-up, in two or in all is bought once', () => {
    const hut = sample('hut');
    const before = counts(whatToBuy(hut, all));
    for (const hookups of [undefined, ['air'], ['air', 'dummy']]) {
      expect(counts(whatToBuy(set(hut, 'r6', { hookups: hookups as string[] }), all))).toEqual(before);
    }
  });
  it('what is made or tested is left out where that is wanted', () => {
    const done = set(sample('hut'), 'k1', { status: 'tested' });
    const left = counts(whatToBuy(done, { leaveOutDone: true }));
    expect(left['3.5 mm stereo plug']).toBeUndefined();
    expect(left['screened lead, two cores, keying']).toBeUndefined();
    expect(left['3.5 mm mono plug']).toBe(3);
  });
  it('ready-made leads without plugs of their own are named by their plugs', () => {
    const hut = sample('hut');
    const kinds = { ...hut.cableKinds, 'key-lead': { ...hut.cableKinds['key-lead']!, readyMade: true } };
    const rows = whatToBuy({ ...hut, cableKinds: kinds }, all).filter((row) => row.group === 'ready-made');
    expect(rows.map((row) => [row.what, row.count])).toEqual([
      ['extension lead, 6.35 mm stereo, 3.00 m', 1],
      ['screened lead, one core, keying, 3.5 mm mono plug to 3.5 mm mono plug, 0.60 m', 1],
      ['screened lead, one core, keying, 3.5 mm mono plug to phono plug, 0.80 m', 1],
      ['screened lead, one core, keying, phono plug to phono plug, 0.60 m', 1],
    ]);
  });
});
