import { describe, expect, it } from 'vitest';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { compareHookups } from '../../core/reports/changes/compare-hookups.ts';
import { copyHookup } from '../../core/station/copy-hookup.ts';
import { edit } from '../../core/station/edit.ts';
import { savedText } from '../../core/station/file/saved-text.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import { recordChange, startHistory, undo } from '../../core/station/history.ts';
import { cablesIn, hookupsOf } from '../../core/station/parts.ts';
import type { Hookup, Station } from '../../core/station/schema/schema.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const named = (station: Station, id: string) => station.hookups.find((h) => h.id === id) as Hookup;
const switched = edit(hut, placeUnit(hut, 'coax-switch', { x: 0, y: 0 }));

describe('comparing two hook-ups', () => {
  it('names the cables that are plugged in for one of them only, with both words the other way round when turned', () => {
    const [air, dummy] = [named(hut, 'air'), named(hut, 'dummy')];
    const cables = compareHookups(hut, dummy, air).filter((d) => 'cable' in d.at[0]!);
    expect(cables).toContainEqual({
      what: 'R4, Meter · antenna to Dummy load',
      at: [{ cable: 'r4' }],
      one: 'plugged in',
      other: 'not',
    });
    const turned = compareHookups(hut, air, dummy).map(({ one, other: right, ...rest }) => ({
      ...rest,
      one: right,
      other: one,
    }));
    expect(turned).toEqual(compareHookups(hut, dummy, air));
    const apart = hut.cables.filter((c) => cablesIn(hut, air).includes(c) !== cablesIn(hut, dummy).includes(c));
    expect(cables.map((d) => d.at)).toEqual(apart.map((c) => [{ cable: c.id }]));
  });

  it.each<[string, Partial<Hookup>, { one: string; other: string } | null]>([
    [
      'a setting of one that is otherwise than as it comes',
      { settings: { 'coax-switch': { position: 'two' } } },
      { one: '2', other: '1' },
    ],
    ['a setting that says what is so anyway', { settings: { 'coax-switch': { position: 'one' } } }, null],
    ['settings of none', {}, null],
  ])('%s', (_, set, wanted) => {
    const differences = compareHookups(switched, { id: 'one', name: 'One', ...set }, { id: 'two', name: 'Two' });
    expect(differences).toEqual(
      wanted ? [{ what: 'Coax switch, Position', at: [{ unit: 'coax-switch' }], ...wanted }] : [],
    );
  });

  it('finds nothing between a hook-up and itself', () => {
    for (const hookup of hookupsOf(hut)) expect(compareHookups(hut, hookup, hookup)).toEqual([]);
  });
});

describe('copying a hook-up', () => {
  it('takes cables and settings along: nothing is otherwise in the copy, and one step back undoes it', () => {
    for (const { id } of hut.hookups) {
      const made = copyHookup(hut, id)!;
      const after = edit(hut, made.change);
      expect(compareHookups(after, named(after, id), named(after, made.copy.id))).toEqual([]);
      expect(cablesIn(after, made.copy).map((c) => c.id)).toEqual(cablesIn(hut, named(hut, id)).map((c) => c.id));
      const history = recordChange(startHistory(hut), made.change);
      expect(history.past.map((step) => step.name)).toEqual(['Copy hook-up']);
      expect(writeStation(undo(history).station)).toBe(writeStation(hut));
    }
  });

  it('a copy of one with the longest name that there is can be saved', () => {
    const named = edit(hut, { type: 'updateHookup', id: 'dummy', set: { name: 'x'.repeat(20_000) } });
    const copied = edit(named, copyHookup(named, 'dummy')!.change);
    expect(copied.hookups.at(-1)?.name).toMatch(/, copy$/);
    expect(savedText(copied)).toHaveProperty('text');
  });
  it('finds a free name and id each time, and removing the copy leaves the file as it was', () => {
    const first = copyHookup(hut, 'dummy')!;
    const once = edit(hut, first.change);
    const second = copyHookup(once, 'dummy')!;
    expect([first.copy.name, second.copy.name]).toEqual(['On the dummy load, copy', 'On the dummy load, copy 2']);
    expect(second.copy.id).not.toBe(first.copy.id);
    expect(writeStation(edit(once, { type: 'removeHookup', id: first.copy.id }))).toBe(writeStation(hut));
  });

  it('of a hook-up that is not there is nothing', () => expect(copyHookup(hut, 'gone')).toBeNull());
});
