import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { describeChange } from '../../core/reports/changes/describe-change.ts';
import { type Change, changeName, edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import { goTo, recordChange, redo, startHistory, undo } from '../../core/station/history.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');

describe('changes', () => {
  it('a removed unit takes its cables along', () => {
    const next = edit(hut, { type: 'removeUnits', ids: ['receiver'] });
    expect(hut.cables.length - next.cables.length).toBe(4); // D4, R3, K4, A1
    expect(next.units.some((u) => u.id === 'receiver')).toBe(false);
  });
  it('a removed hook-up takes the cables that were in it alone', () => {
    const next = edit(hut, { type: 'removeHookup', id: 'dummy' });
    expect(hut.cables.filter((c) => !next.cables.some((n) => n.id === c.id)).map((c) => c.number)).toEqual(['R4']);
  });
  it('a field set to undefined is gone from the file', () => {
    const noted = edit(hut, { type: 'updateUnit', id: 'meter', set: { note: 'borrowed' } });
    const set = { note: undefined } as unknown as { note: string };
    expect(writeStation(edit(noted, { type: 'updateUnit', id: 'meter', set }))).toBe(writeStation(hut));
  });
  it('keeps what the document already carries: it may hold the user’s own figures', () => {
    const meter = hut.kinds['swr-meter'];
    if (!meter) throw new Error('the hut has a meter');
    const own: Station = { ...hut, kinds: { ...hut.kinds, 'swr-meter': { ...meter, summary: 'mine' } } };
    expect(edit(own, placeUnit(own, 'swr-meter', { x: 0, y: 0 })).kinds['swr-meter']?.summary).toBe('mine');
  });
  it('accepting twice keeps the last reason; taking back removes it', () => {
    const accept = (reason: string): Change => ({ type: 'accept', acceptance: { finding: 'f', reason, figures: '' } });
    const twice = [accept('a'), accept('b')].reduce(edit, hut);
    expect(twice.accepted.map((a) => a.reason)).toEqual(['b']);
    expect(edit(twice, { type: 'takeBack', finding: 'f' }).accepted).toEqual([]);
  });
  it('readings are kept one after the other, and struck out by step and date', () => {
    const read = (when: string, value: number): Change => ({
      type: 'addReading',
      reading: { step: 'supply/supply.output/volts', value, unit: 'V', when },
    });
    const twice = [read('2025-03-01', 13.8), read('2026-03-01', 13.7)].reduce(edit, hut);
    expect(twice.readings.map((r) => r.value)).toEqual([13.8, 13.7]);
    const struck = edit(twice, { type: 'removeReading', step: 'supply/supply.output/volts', when: '2026-03-01' });
    expect(struck.readings.map((r) => r.value)).toEqual([13.8]);
    expect(changeName(read('2026-03-01', 13.7))).toBe('Write down a reading');
  });
  it('a removed unit takes the couplings of its antenna along', () => {
    const antenna = { unit: 'antenna', port: 'feed' };
    const station: Station = { ...hut, couplings: [{ a: antenna, b: antenna, lossDb: 20 }] };
    expect(edit(station, { type: 'removeUnits', ids: ['antenna'] }).couplings).toEqual([]);
    expect(edit(station, { type: 'removeUnits', ids: ['keyer'] }).couplings).toHaveLength(1);
  });
  it('a kind described anew loses the cables of ports that it no longer has, and of no others', () => {
    const kind = hut.kinds['swr-meter'];
    if (!kind) throw new Error('the hut has a meter');
    const [gone, ...ports] = kind.ports;
    const next = edit(hut, { type: 'setKind', id: 'swr-meter', kind: { ...kind, ports }, connectors: {} });
    const lost = hut.cables.filter((c) => !next.cables.includes(c));
    expect(lost.map((c) => c.number)).toEqual(
      hut.cables
        .filter(({ a, b }) => [a, b].some((p) => p.unit === 'meter' && p.port === gone?.id))
        .map((c) => c.number),
    );
    expect(lost.length).toBeGreaterThan(0);
    expect(next.kinds['swr-meter']?.ports).toHaveLength(ports.length);
  });
  it('notes and zones come and go; without any the file is as it was', () => {
    const desk = {
      id: 'zone-1',
      type: 'zone',
      text: 'desk',
      position: { x: 0, y: 0 },
      width: 200,
      height: 90,
    } as const;
    const drawn = edit(hut, { type: 'addMarks', marks: [desk] });
    const renamed = edit(drawn, { type: 'updateMark', id: 'zone-1', set: { text: 'wall' } });
    expect(readStation(writeStation(renamed))).toMatchObject({ station: { marks: [{ ...desk, text: 'wall' }] } });
    expect(writeStation(edit(renamed, { type: 'removeMarks', ids: ['zone-1'] }))).toBe(writeStation(hut));
  });
  it('has a name for the list of steps', () => {
    expect(changeName({ type: 'removeCables', ids: [] })).toBe('Remove cable');
    expect(changeName({ type: 'all', name: 'Tidy up', changes: [] })).toBe('Tidy up');
  });
});

/** A change that may or may not find what it names; any sequence of them has to leave a station that a file can hold. */
const changes = fc.oneof(
  fc.record({ kind: fc.nat(shelf.length - 1), x: fc.integer({ min: -500, max: 500 }) }).map(
    ({ kind, x }) =>
      (s: Station) =>
        placeUnit(s, shelf[kind]?.id ?? '', { x, y: -x }),
  ),
  fc.record({ a: fc.nat(), b: fc.nat() }).map(({ a, b }) => (s: Station): Change => {
    const ports = s.units.flatMap((u) => (s.kinds[u.kind]?.ports ?? []).map((p) => ({ unit: u.id, port: p.id })));
    const [from, to] = [ports[a % ports.length], ports[b % ports.length]];
    return from && to && from !== to ? layCable(s, from, to) : { type: 'describe', set: {} };
  }),
  fc.nat().map(
    (n) =>
      (s: Station): Change => ({ type: 'removeUnits', ids: [s.units[n % Math.max(1, s.units.length)]?.id ?? ''] }),
  ),
  fc.nat().map(
    (n) =>
      (s: Station): Change => ({ type: 'removeCables', ids: [s.cables[n % Math.max(1, s.cables.length)]?.id ?? ''] }),
  ),
  fc.record({ n: fc.nat(), x: fc.integer({ min: 0, max: 900 }) }).map(
    ({ n, x }) =>
      (s: Station): Change => ({
        type: 'moveUnits',
        moves: [{ id: s.units[n % Math.max(1, s.units.length)]?.id ?? '', position: { x, y: x } }],
      }),
  ),
  fc.nat(20).map(
    (n) =>
      (_: Station): Change => ({ type: 'removeHookup', id: n < 10 ? 'dummy' : 'air' }),
  ),
  fc.integer({ min: 5, max: 40 }).map(
    (speedWpm) =>
      (_: Station): Change => ({ type: 'setPlan', set: { speedWpm } }),
  ),
);

describe('laws of editing', () => {
  it('any edits leave a station that reads back the same, and undoing them all leaves the very file', () => {
    fc.assert(
      fc.property(fc.array(changes, { minLength: 1, maxLength: 25 }), (made) => {
        const end = made.reduce((h, change) => recordChange(h, change(h.station)), startHistory(hut));
        const text = writeStation(end.station);
        const read = readStation(text);
        expect('problems' in read ? read.problems : writeStation(read.station)).toBe(text);
        const back = end.past.reduce((h) => undo(h), end);
        expect(writeStation(back.station)).toBe(writeStation(hut));
        const again = back.future.reduce((h) => redo(h), back);
        expect(writeStation(again.station)).toBe(text);
      }),
      { numRuns: 60 },
    );
  });
  it('a change says in words what it does where it does something, and nothing where it does nothing', () => {
    fc.assert(
      fc.property(fc.array(changes, { minLength: 1, maxLength: 25 }), (made) => {
        let station = hut;
        let text = writeStation(hut);
        for (const make of made) {
          const change = make(station);
          const lines = describeChange(station, change);
          station = edit(station, change);
          const after = writeStation(station);
          expect(lines.length > 0).toBe(after !== text);
          expect(lines.map((line) => line.words).join('\n')).not.toMatch(/undefined|NaN/);
          text = after;
        }
      }),
      { numRuns: 40 },
    );
  });
  it('undo and redo at the ends do nothing', () => {
    const history = startHistory(hut);
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
  });
  it('going to a step is undoing or redoing as often as it takes, and no further than there are steps', () => {
    const titles = ['a', 'b', 'c', 'd'];
    const end = titles.reduce((h, title) => recordChange(h, { type: 'describe', set: { title } }), startHistory(hut));
    expect(goTo(end, 4)).toBe(end);
    for (const [done, title] of [hut.title, ...titles].entries()) {
      const there = goTo(end, done);
      expect(there.station.title).toBe(title);
      expect([there.past.length, there.future.length]).toEqual([done, titles.length - done]);
      expect(goTo(there, 4)).toEqual(end);
    }
    expect(goTo(end, -3)).toEqual(goTo(end, 0));
    expect(goTo(goTo(end, 1), 9)).toEqual(end);
  });
});
