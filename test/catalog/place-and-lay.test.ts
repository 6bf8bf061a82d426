import { describe, expect, it } from 'vitest';
import { proposalWords } from '../../core/catalog/cables/cable-words.ts';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { layInHookup } from '../../core/catalog/laying/lay-in-hookup.ts';
import { moveCableEnd } from '../../core/catalog/laying/move-cable-end.ts';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { splitCable, throughPorts } from '../../core/catalog/laying/split-cable.ts';
import { createStation } from '../../core/station/create-station.ts';
import { edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import { plugOf } from '../../core/station/plug-of.ts';
import type { PortRef, Station } from '../../core/station/schema/schema.ts';

const port = (text: string): PortRef => ({ unit: text.split('.')[0]!, port: text.split('.')[1]! });
const place = (station: Station, ...kinds: string[]) =>
  kinds.reduce((s, kind) => edit(s, placeUnit(s, kind, { x: 0, y: 0 })), station);
const lay = (station: Station, a: string, b: string, hookup?: string) =>
  edit(station, layCable(station, port(a), port(b), hookup));
const kindNamed = (id: string) => shelf.find((k) => k.id === id)!.kind;
const problems = (station: Station) => {
  const result = readStation(writeStation(station));
  return 'problems' in result ? result.problems : [];
};

describe('placing a unit', () => {
  it('of a kind with the longest id that there is gives it an id that a file can hold', () => {
    const id = 'k'.repeat(80);
    const own = { kind: kindNamed('tee-piece'), connectors: {} };
    const twice = [1, 2, 3].reduce(
      (station) => edit(station, placeUnit(station, id, { x: 0, y: 0 }, own)),
      createStation(),
    );
    expect(twice.units.map((u) => u.id)).toEqual([id, `${'k'.repeat(78)}-2`, `${'k'.repeat(78)}-3`]);
    expect(problems(twice)).toEqual([]);
  });
  it.each(shelf)('$id gives a document that opens by itself', ({ id }) => {
    const station = place(createStation(), id);
    expect(station.units[0]).toMatchObject({ id, kind: id });
    expect(problems(station)).toEqual([]);
  });

  it('gives every unit an id and a name of its own', () => {
    const { units } = place(createStation(), 'keyer', 'keyer', 'dummy-load-5w', 'dummy-load-100w');
    expect(units.map((u) => u.id)).toEqual(['keyer', 'keyer-2', 'dummy-load-5w', 'dummy-load-100w-2']);
    expect(units.map((u) => u.name)).toEqual(['Keyer', 'Keyer 2', 'Dummy load', 'Dummy load 2']);
  });

  it('takes a kind of one’s own with its connectors, beside another one of that id', () => {
    const own = { kind: { ...shelf[0]!.kind, name: 'My supply, 12 V' }, connectors };
    const first = edit(createStation(), placeUnit(createStation(), 'own-supply', { x: 0, y: 0 }, own));
    expect(first.units[0]).toMatchObject({ id: 'own-supply', kind: 'own-supply', name: 'My supply' });
    expect(problems(first)).toEqual([]);
    const again = edit(first, placeUnit(first, 'own-supply', { x: 0, y: 0 }, structuredClone(own)));
    expect(again.units[1]).toMatchObject({ kind: 'own-supply', name: 'My supply 2' });
    const newer = { ...own, kind: { ...own.kind, summary: 'mended' } };
    const both = edit(again, placeUnit(again, 'own-supply', { x: 0, y: 0 }, newer));
    expect(both.units[2]).toMatchObject({ kind: 'own-supply-2', name: 'My supply 3' });
    expect(both.kinds['own-supply']).toEqual(own.kind);
    expect(both.kinds['own-supply-2']).toEqual(newer.kind);
  });

  it('does not know kinds that are not on the shelf', () => {
    expect(() => placeUnit(createStation(), 'unheard-of', { x: 0, y: 0 })).toThrow('unheard-of');
  });
});

const desk = place(
  createStation(),
  'bench-supply',
  'switch-mode-supply',
  'fused-strip',
  'cw-transmitter-3w',
  'transceiver-100w',
  'receiver-with-mute',
  'changeover-by-line',
  'wire-antenna',
  'arrestor',
  'earth-bar',
  'paddle',
  'keyer',
  'headphones',
  'computer',
  'sdr-receiver-usb',
);

describe('laying a cable', () => {
  it.each([
    ['fused-strip.one', 'cw-transmitter-3w.power', 'D1', 'lead-awg-18', 'two-pole-15', 'barrel-21-plug', 0.6],
    ['switch-mode-supply.out', 'transceiver-100w.power', 'D1', 'lead-awg-10', 'ring-terminals', 'two-pole-30', 0.6],
    ['cw-transmitter-3w.antenna', 'changeover-by-line.transmitter', 'R1', 'coax-rg-58', 'bnc-plug', 'bnc-plug', 0.6],
    ['changeover-by-line.receiver', 'receiver-with-mute.antenna', 'R1', 'coax-rg-58', 'bnc-plug', 'phono-plug', 0.6],
    ['arrestor.antenna', 'wire-antenna.feed', 'R1', 'coax-rg-58', 'uhf-plug', 'uhf-plug', 6],
    ['paddle.out', 'keyer.paddle', 'K1', 'paddle-lead', 'stereo-35-plug', 'stereo-35-plug', 0.6],
    ['keyer.out', 'changeover-by-line.line', 'K1', 'key-lead', 'mono-35-plug', 'phono-plug', 0.6],
    [
      'receiver-with-mute.phones',
      'headphones.plug',
      'A1',
      'extension-stereo-635',
      'stereo-635-plug',
      'stereo-635-socket',
      0.6,
    ],
    [
      'headphones.plug',
      'receiver-with-mute.phones',
      'A1',
      'extension-stereo-635',
      'stereo-635-socket',
      'stereo-635-plug',
      0.6,
    ],
    ['computer.usb-one', 'sdr-receiver-usb.usb', 'C1', 'usb-lead', 'usb-a-plug', 'usb-b-plug', 0.6],
    ['arrestor.earth', 'earth-bar.one', 'E1', 'earth-wire', 'earth-lug', 'earth-lug', 0.6],
  ])('%s to %s is %s, %s', (a, b, number, kind, plugA, plugB, lengthM) => {
    const station = lay(desk, a, b);
    const [cable] = station.cables;
    expect(cable).toMatchObject({ number, kind, lengthM, a: port(a), b: port(b) });
    expect(plugOf(station, cable!, 'a')?.id).toBe(plugA);
    expect(plugOf(station, cable!, 'b')?.id).toBe(plugB);
    expect(problems(station)).toEqual([]);
  });

  it('takes the next free number of its class', () => {
    const two = lay(lay(desk, 'arrestor.antenna', 'wire-antenna.feed'), 'paddle.out', 'keyer.paddle');
    const three = lay(two, 'cw-transmitter-3w.antenna', 'changeover-by-line.transmitter');
    expect(three.cables.map((c) => c.number)).toEqual(['R1', 'K1', 'R2']);
    const gap = edit(three, { type: 'removeCables', ids: ['r1'] });
    expect(lay(gap, 'arrestor.station', 'changeover-by-line.antenna').cables.at(-1)?.number).toBe('R1');
  });

  it('is in the hook-up that it was drawn in, or in all', () => {
    expect(lay(desk, 'paddle.out', 'keyer.paddle').cables[0]?.hookups).toBeUndefined();
    expect(lay(desk, 'paddle.out', 'keyer.paddle', 'air').cables[0]?.hookups).toEqual(['air']);
  });

  it('wires plus to plus where a jack is centre minus, and says so', () => {
    const station = lay(desk, 'fused-strip.one', 'receiver-with-mute.power');
    const swapped = [
      { a: 'plus', b: 'shell' },
      { a: 'minus', b: 'centre' },
    ];
    expect(station.cables[0]?.wiring).toEqual(swapped);
    const back = lay(desk, 'receiver-with-mute.power', 'fused-strip.one').cables[0]?.wiring;
    expect(back).toEqual([
      { a: 'centre', b: 'minus' },
      { a: 'shell', b: 'plus' },
    ]);
    expect(proposalWords(desk, port('fused-strip.one'), port('receiver-with-mute.power'))).toMatch(
      /^D1: .*AWG 18.*0\.60 m.*wired plus to shell, minus to centre$/,
    );
    expect(lay(desk, 'fused-strip.one', 'cw-transmitter-3w.power').cables[0]?.wiring).toBeUndefined();
  });

  it('is as long as the drawing’s scale says, with a fifth to spare', () => {
    const scaled = edit(desk, { type: 'describe', set: { settings: { metresPerUnit: 0.01 } } });
    const apart = edit(scaled, { type: 'moveUnits', moves: [{ id: 'keyer', position: { x: 300, y: 100 } }] });
    // 3 m across and 1 m down: 4 m, and a fifth of it.
    expect(lay(apart, 'paddle.out', 'keyer.paddle').cables[0]?.lengthM).toBe(4.8);
    expect(lay(apart, 'fused-strip.one', 'cw-transmitter-3w.power').cables[0]?.lengthM).toBe(0.3);
  });

  it('is never longer than a file may hold, whatever the scale', () => {
    const scaled = edit(desk, { type: 'describe', set: { settings: { metresPerUnit: 10 } } });
    const apart = edit(scaled, { type: 'moveUnits', moves: [{ id: 'keyer', position: { x: 9000, y: 100 } }] });
    const laid = lay(apart, 'paddle.out', 'keyer.paddle');
    expect(laid.cables[0]?.lengthM).toBe(10_000);
    expect(readStation(writeStation(laid))).toHaveProperty('station');
  });

  it('is thick enough for its current over its length', () => {
    const far = edit(desk, { type: 'describe', set: { settings: { metresPerUnit: 0.01 } } });
    const strip = edit(far, { type: 'moveUnits', moves: [{ id: 'cw-transmitter-3w', position: { x: 2000, y: 0 } }] });
    // 0.62 A over 24 m out and back in AWG 18 (20.95 mΩ/m): 2 × 24 × 0.02095 × 0.62 = 0.62 V, more than 5 % of 12 V.
    const [lead] = lay(strip, 'fused-strip.one', 'cw-transmitter-3w.power').cables;
    expect(lead).toMatchObject({ lengthM: 24, kind: 'lead-awg-16' });
  });
});

describe('laying a cable in one hook-up of several', () => {
  const [air, bench] = [
    { id: 'air', name: 'On the air' },
    { id: 'bench', name: 'On the bench' },
  ];
  const antennaOn = lay(desk, 'arrestor.antenna', 'wire-antenna.feed');
  const two = [air, bench].reduce((s, hookup) => edit(s, { type: 'addHookup', hookup }), antennaOn);
  const layIn = (station: Station, a: string, b: string, hookup: { id: string; name: string }) =>
    edit(station, layInHookup(station, port(a), port(b), hookup));
  const hookups = (station: Station) => station.cables.map((c) => [c.number, c.hookups]);

  it('is in all where both jacks are free', () => {
    expect(hookups(layIn(two, 'paddle.out', 'keyer.paddle', bench))).toEqual([
      ['R1', undefined],
      ['K1', undefined],
    ]);
  });
  it('takes the place of the cable in its jack, which stays in the others', () => {
    const swapped = layIn(two, 'arrestor.antenna', 'cw-transmitter-3w.antenna', bench);
    expect(hookups(swapped)).toEqual([
      ['R1', ['air']],
      ['R2', ['bench']],
    ]);
    // Back in the first hook-up the jack has its own cable again: a further one is a second plug in it.
    expect(hookups(layIn(swapped, 'arrestor.antenna', 'changeover-by-line.antenna', air)).at(-1)).toEqual([
      'R3',
      ['air'],
    ]);
    expect(problems(swapped)).toEqual([]);
  });
  it('leaves a post its other wires', () => {
    const earthed = layIn(two, 'arrestor.earth', 'earth-bar.one', air);
    expect(hookups(layIn(earthed, 'earth-bar.one', 'bench-supply.out', bench)).slice(1)).toEqual([
      ['E1', undefined],
      ['E2', undefined],
    ]);
  });
  it('is in the only hook-up there is, as drawn', () => {
    const drawn = { id: 'as-drawn', name: 'As drawn' };
    expect(hookups(layIn(antennaOn, 'arrestor.antenna', 'cw-transmitter-3w.antenna', drawn))).toEqual([
      ['R1', undefined],
      ['R2', undefined],
    ]);
  });
});

describe('moving an end', () => {
  const wired = lay(lay(desk, 'fused-strip.one', 'receiver-with-mute.power'), 'paddle.out', 'keyer.paddle');
  it('keeps number and length; plugs and wiring are those of the new port', () => {
    const change = moveCableEnd(wired, 'd1', 'b', port('cw-transmitter-3w.power'));
    const moved = edit(wired, change!);
    const [before, after] = [wired, moved].map((s) => s.cables.find((c) => c.id === 'd1'));
    expect(after).toEqual({ ...before, b: port('cw-transmitter-3w.power'), wiring: undefined });
    expect('wiring' in after!).toBe(false);
    expect(problems(moved)).toEqual([]);
  });
  it('does not end where the cable begins', () => {
    expect(moveCableEnd(wired, 'd1', 'b', port('fused-strip.one'))).toBeNull();
    expect(moveCableEnd(wired, 'd9', 'b', port('fused-strip.one'))).toBeNull();
  });
});

describe('putting a unit into a cable', () => {
  it.each([
    ['swr-meter', 'cw-transmitter-3w.antenna', 'changeover-by-line.transmitter'],
    ['dc-switch', 'fused-strip.one', 'cw-transmitter-3w.power'],
  ])('%s: the cable ends at it and another one goes on', (kind, a, b) => {
    const whole = lay(desk, a, b, 'air');
    const split = edit(whole, splitCable(whole, whole.cables[0]!.id, placeUnit(whole, kind, { x: 5, y: 5 }))!);
    const [first, second] = split.cables;
    expect(split.units.at(-1)).toMatchObject({ kind, position: { x: 5, y: 5 } });
    expect(first).toMatchObject({ number: whole.cables[0]!.number, a: port(a), hookups: ['air'] });
    expect(second).toMatchObject({ b: port(b), hookups: ['air'] });
    expect([first?.b.unit, second?.a.unit]).toEqual([split.units.at(-1)?.id, split.units.at(-1)?.id]);
    expect(first?.b.port).not.toBe(second?.a.port);
    const through = throughPorts(split.kinds[kind]!, a.includes('antenna') ? 'rf' : 'dc');
    expect([first?.b.port, second?.a.port]).toEqual([through?.in, through?.out]);
    expect(problems(edit(split, { type: 'addHookup', hookup: { id: 'air', name: 'Air' } }))).toEqual([]);
  });
  it('is refused where the cable would not go on', () => {
    const whole = lay(desk, 'paddle.out', 'keyer.paddle');
    expect(splitCable(whole, 'k1', placeUnit(whole, 'dummy-load-5w', { x: 0, y: 0 }))).toBeNull();
    expect(splitCable(whole, 'nothing', placeUnit(whole, 'keyer', { x: 0, y: 0 }))).toBeNull();
  });
  it('keeps where power comes from: a strip goes in with its input first', () => {
    expect(throughPorts(kindNamed('fused-strip'), 'dc')?.in).toBe('input');
    expect(throughPorts(kindNamed('dummy-load-5w'), 'rf')).toBeNull();
    expect(throughPorts(kindNamed('keyer'), 'control')).toEqual({ in: 'paddle', out: 'out' });
  });
});
