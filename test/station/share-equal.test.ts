import { describe, expect, it } from 'vitest';
import { edit } from '../../core/station/edit.ts';
import { shareEqual } from '../../core/station/share-equal.ts';
import { sample } from '../stations/samples.ts';

const station = sample('hut');
const copy = <T>(value: T): T => structuredClone(value);

describe('a document that comes from elsewhere', () => {
  it('is the one that is there where all is equal', () => {
    expect(shareEqual(station, copy(station))).toBe(station);
  });
  it('has only what changed as objects of its own', () => {
    const [first, second] = station.cables;
    const next = edit(station, { type: 'updateCable', id: first?.id ?? '', set: { lengthM: 77 } });
    const shared = shareEqual(station, copy(next));
    expect(shared).toEqual(next);
    expect(shared.cables[0]).not.toBe(first);
    expect(shared.cables[1]).toBe(second);
    expect(shared.units).toBe(station.units);
    expect(shared.kinds).toBe(station.kinds);
  });
  it('finds items by their ids where others went before them', () => {
    const [first, ...others] = station.cables;
    const next = edit(station, { type: 'removeCables', ids: [first?.id ?? ''] });
    expect(shareEqual(station, copy(next)).cables.map((cable, i) => cable === others[i])).not.toContain(false);
  });
  it('keeps what is undefined, null, empty or of another kind apart', () => {
    expect(shareEqual({ a: undefined }, {})).toEqual({});
    expect('a' in shareEqual({ a: undefined }, {})).toBe(false);
    expect(shareEqual({}, { a: undefined })).toHaveProperty('a');
    expect(shareEqual([], {})).toEqual({});
    expect(shareEqual({}, [])).toEqual([]);
    expect(shareEqual(null, { a: 1 })).toEqual({ a: 1 });
    expect(shareEqual({ a: 1 }, null)).toBe(null);
    expect(shareEqual([1, 2], [1])).toEqual([1]);
    expect(Object.is(shareEqual({ a: 0 }, { a: -0 }).a, -0)).toBe(true);
  });
});
