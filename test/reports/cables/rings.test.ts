import { describe, expect, it } from 'vitest';
import { cableTable } from '../../../core/reports/cables/cable-table.ts';
import { listCables } from '../../../core/reports/cables/list-cables.ts';
import { ringsOf } from '../../../core/reports/cables/rings.ts';
import { unitCodes } from '../../../core/reports/cables/unit-codes.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { sample } from '../../stations/samples.ts';

const hut = sample('hut');

describe('colour rings', () => {
  // IEC 60062: 0 black, 1 brown, 2 red, 3 orange, 4 yellow, 5 green, 6 blue, 7 violet, 8 grey, 9 white.
  it.each([
    ['d1', 'D0123456789', ['RD', 'BK', 'BN', 'RD', 'OG', 'YE', 'GN', 'BU', 'VT', 'GY', 'WH']],
    ['r1', 'R12', ['BU', 'BN', 'RD']],
    ['k1', 'main', ['BN']],
    ['e1', 'AR-1', ['GNYE', 'BN']],
    ['a1', '٣', ['VT']],
  ])('of %s numbered %s', (id, number, rings) => {
    const cable = hut.cables.find((c) => c.id === id)!;
    expect(ringsOf(hut, { ...cable, number })).toEqual(rings);
  });
});

it('the ring of a jack is beside them, told for each end', () => {
  const ringed = edit(hut, { type: 'updateUnit', id: 'receiver', set: { rings: { power: 'BU' } } });
  const { head, rows } = cableTable(listCables(ringed));
  const d4 = rows.find(([number]) => number === 'D4');
  expect(d4?.[head.indexOf('Jack’s ring from')]).toBe('');
  expect(d4?.[head.indexOf('Jack’s ring to')]).toBe('BU');
  expect(d4?.[head.indexOf('Rings')]).toBe('RD YE');
});

describe('short codes of units', () => {
  const named = (...names: string[]): Station => {
    const [first] = hut.units;
    return { ...hut, units: names.map((name, i) => ({ ...first!, id: `u${i}`, name })) };
  };
  it.each([
    [
      ['Bench supply', 'Transmitter', 'Tuner'],
      ['BS', 'TR', 'TU'],
    ],
    [
      ['Tracker', 'Transmitter'],
      ['TR', 'TRA'],
    ],
    [
      ['Receiver 2', 'Receiver 1'],
      ['R2', 'R1'],
    ],
    [
      ['Key', 'Key', 'Key'],
      ['KE', 'KEY', 'KEY1'],
    ],
    [
      ['Ö', '—'],
      ['Ö1', 'U1'],
    ],
  ])('%j', (names, codes) => expect([...unitCodes(named(...names)).values()]).toEqual(codes));
});
