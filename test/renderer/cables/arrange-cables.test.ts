import { describe, expect, it } from 'vitest';
import { listCables } from '../../../core/index.ts';
import {
  arrangeCables,
  type CableFilter,
  type CableSort,
} from '../../../renderer/stages/cables/list/arrange-cables.ts';
import { filterWords } from '../../../renderer/stages/cables/list/filter-words.ts';
import { sample } from '../../stations/samples.ts';

const hut = sample('hut');
const rows = listCables({
  ...hut,
  cables: hut.cables.map((c) =>
    c.id === 'd4' ? { ...c, status: 'made', note: 'blue tape', fuse: { amps: 10, family: 'blade', atM: 0.1 } } : c,
  ),
});
const whole: CableFilter = { words: '', class: 'all', status: 'all', hookup: 'all' };
const byClass: CableSort = { by: 'class', down: false };
const numbers = (filter: Partial<CableFilter>, sort: CableSort = byClass) =>
  arrangeCables(rows, { ...whole, ...filter }, sort).map((row) => row.number);

describe('the cable list', () => {
  it('is by class in the order of the trade, then by number', () =>
    expect(numbers({}).join(' ')).toBe('D1 D2 D3 D4 R1 R2 R3 R4 R5 R6 R7 K1 K2 K3 K4 A1 E1'));
  it.each([
    ['number', false, ['A1', 'D1']],
    ['number', true, ['R7', 'R6']],
    // 0.6 m: K3, K4, R1 to R5; equal ones by their number whichever way the list goes.
    ['length', false, ['K3', 'K4']],
    ['length', true, ['R7', 'A1']],
    ['fuse', true, ['D4', 'A1']],
    ['status', true, ['D4', 'A1']],
    ['note', true, ['D4', 'A1']],
    // Arrestor, arrestor, bench supply.
    ['from', false, ['R7', 'E1']],
    // Arrestor, then the changeover's line.
    ['to', false, ['R6', 'K2']],
    ['kind', false, ['E1', 'A1']],
  ] as [CableSort['by'], boolean, string[]][])('by %s, downwards %s, begins with %j', (by, down, first) =>
    expect(numbers({}, { by, down }).slice(0, 2)).toEqual(first),
  );
  it.each([
    ['words of any column', { words: 'receiver plus' }, ['D4']],
    ['a plug', { words: 'BNC' }, ['R1', 'R2', 'R3', 'R4']],
    ['a note', { words: 'TAPE' }, ['D4']],
    ['a class', { class: 'earth' }, ['E1']],
    ['a status', { status: 'made' }, ['D4']],
    ['a hook-up, with what is in all of them', { hookup: 'On the dummy load', class: 'rf' }, ['R1', 'R2', 'R3', 'R4']],
    ['nothing', { words: 'no such thing' }, []],
  ] as [string, Partial<CableFilter>, string[]][])('is filtered by %s', (_name, filter, left) =>
    expect(numbers(filter)).toEqual(left),
  );
  it('says on paper what it leaves out', () => {
    expect(filterWords(whole)).toBe('');
    expect(filterWords({ words: ' coax ', class: 'rf', status: 'made', hookup: 'all' })).toBe('Only: RF, made, “coax”');
  });
});
