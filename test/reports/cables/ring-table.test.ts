import { expect, it } from 'vitest';
import { ringTable } from '../../../core/reports/cables/ring-table.ts';
import { edit } from '../../../core/station/edit.ts';
import { sample } from '../../stations/samples.ts';

const hut = sample('hut');

it('a station without rings has an empty table', () => expect(ringTable(hut).rows).toEqual([]));

it('each jack with a ring is named with its colour, its letters and the cables in it', () => {
  const one = edit(hut, { type: 'updateUnit', id: 'receiver', set: { rings: { power: 'BU' } } });
  const two = edit(one, { type: 'updateUnit', id: 'strip', set: { rings: { three: 'BU', four: 'OG' } } });
  expect(ringTable(two).rows).toEqual([
    ['Fused strip · 3', 'blue (BU)', 'D4'],
    // Nothing is plugged in there.
    ['Fused strip · 4', 'orange (OG)', ''],
    ['Receiver · power', 'blue (BU)', 'D4'],
  ]);
});
