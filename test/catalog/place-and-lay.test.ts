import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { layCable } from '../../core/catalog/lay.ts';
import { placeUnit } from '../../core/catalog/place.ts';
import { createStation } from '../../core/station/create.ts';
import { edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/read.ts';
import { plugOf } from '../../core/station/references.ts';
import type { PortRef, Station } from '../../core/station/schema.ts';
import { writeStation } from '../../core/station/write.ts';

const port = (text: string): PortRef => ({ unit: text.split('.')[0]!, port: text.split('.')[1]! });
const place = (station: Station, ...kinds: string[]) =>
  kinds.reduce((s, kind) => edit(s, placeUnit(s, kind, { x: 0, y: 0 })), station);
const lay = (station: Station, a: string, b: string, hookup?: string) =>
  edit(station, layCable(station, port(a), port(b), hookup));
const problems = (station: Station) => {
  const result = readStation(writeStation(station));
  return 'problems' in result ? result.problems : [];
};

describe('placing a unit', () => {
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

  it('keeps centre plus where the jack is centre minus, for the rules to find', () => {
    expect(lay(desk, 'fused-strip.one', 'receiver-with-mute.power').cables[0]?.wiring).toBeUndefined();
  });
});
