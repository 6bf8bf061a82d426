import { describe, expect, it } from 'vitest';
import { connectors } from '../../../core/catalog/connectors.ts';
import { heatShrinkFor } from '../../../core/reports/make/heat-shrink.ts';
import { cutLengthM } from '../../../core/reports/make/strip.ts';
import { type MakeRow, whatToMake } from '../../../core/reports/make/what-to-make.ts';
import { edit } from '../../../core/station/edit.ts';
import type { Cable, Station } from '../../../core/station/schema/schema.ts';
import { sample } from '../../stations/samples.ts';

const hut = sample('hut');
const all = { leaveOutDone: false };
const rowOf = (station: Station, number: string): MakeRow =>
  whatToMake(station, all).find((row) => row.number === number)!;
const set = (station: Station, id: string, fields: Partial<Omit<Cable, 'id'>>) =>
  edit(station, { type: 'updateCable', id, set: fields });

describe('cut length', () => {
  it.each([
    ['a pair of ring terminals at each end: 10 mm each', 0.8, ['ring-terminals', 'ring-terminals'], 0.82],
    ['BNC and PL-259: 20 and 25 mm, up to the centimetre', 0.6, ['bnc-plug', 'uhf-plug'], 0.65],
    ['round figures stay round', 0.6, ['bnc-plug', 'bnc-plug'], 0.64],
    ['a multi-way plug: 30 mm', 1, ['din-8-plug', 'bare-wire'], 1.04],
    ['a plug that is not known takes nothing', 1, ['nothing', 'bnc-plug'], 1.02],
  ])('%s', (_name, lengthM, plugs, metres) =>
    expect(
      cutLengthM(
        lengthM,
        plugs.map((id) => connectors[id]),
      ),
    ).toBe(metres),
  );
});

describe('heat-shrink', () => {
  it.each([
    ['two plain plugs', ['bnc-plug', 'uhf-plug'], false, { overCable: 2, overCores: 0 }],
    [
      'a stereo plug has three cores soldered to it',
      ['stereo-35-plug', 'mono-35-plug'],
      false,
      { overCable: 2, overCores: 3 },
    ],
    [
      'two ring terminals, and a fuse with two joints',
      ['ring-terminals', 'barrel-21-plug'],
      true,
      { overCable: 2, overCores: 4 },
    ],
    ['a modular plug has none over its cores', ['rj45-plug', 'rj45-plug'], false, { overCable: 2, overCores: 0 }],
    ['a bare end has none', ['bare-wire', 'barrel-21-plug'], false, { overCable: 1, overCores: 0 }],
  ])('%s', (_name, plugs, fuse, pieces) =>
    expect(
      heatShrinkFor(
        plugs.map((id) => connectors[id]),
        fuse,
      ),
    ).toEqual(pieces),
  );
});

describe('what to make', () => {
  it('is every cable of a sample but the ready-made ones, once though it is in several hook-ups', () => {
    // A1 is an extension lead in both; all others are soldered or crimped.
    for (const name of ['hut', 'hut-first-draft'] as const) {
      const station = sample(name);
      const wanted = station.cables.map((c) => c.number).filter((number) => number !== 'A1');
      expect(
        whatToMake(station, all)
          .map((row) => row.number)
          .sort(),
      ).toEqual(wanted.sort());
    }
  });
  it('an extension lead with another plug on it is made by hand', () => {
    const station = set(hut, 'a1', { plugs: { a: 'mono-635-plug', b: 'stereo-635-socket' } });
    const carried = { ...station, connectors: { ...connectors, ...station.connectors } };
    expect(rowOf(carried, 'A1').ends.map((end) => end.plug)).toEqual([
      '6.35 mm mono plug',
      '6.35 mm stereo in-line socket',
    ]);
  });
  it('names plugs, cores and where each goes; D4 is wired plus to shell', () => {
    expect(rowOf(hut, 'D4')).toMatchObject({
      kind: 'two-core lead, AWG 20',
      conductors: '2 × AWG 20',
      cutM: 1.03,
      ends: [
        { at: 'Fused strip · 3', plug: 'two-pole, 15 A', pieces: 1, adapters: [] },
        { at: 'Receiver · power', plug: 'barrel plug 5.5/2.1', pieces: 1, adapters: [] },
      ],
      flags: 2,
      oneToOne: false,
      wiring: [
        { from: 'plus', to: 'shell', what: 'live' },
        { from: 'minus', to: 'centre', what: 'return' },
      ],
    });
    expect(rowOf(hut, 'K1')).toMatchObject({ conductors: '2 × 0.14 mm², screen', oneToOne: true });
    expect(rowOf(hut, 'R1').conductors).toBe('50 Ω coax');
  });
  it('has the fuse, its holder and where it sits', () => {
    const fused = set(hut, 'd1', { fuse: { amps: 7.5, family: 'blade', atM: 0.1 } });
    expect(rowOf(fused, 'D1').fuse).toEqual({
      name: '7.5 A blade',
      holder: 'in-line holder for a blade fuse',
      atM: 0.1,
    });
    expect(rowOf(fused, 'D1').heatShrink).toEqual({ overCable: 2, overCores: 6 });
  });
  it('says where a screen is joined at one end only', () =>
    expect(rowOf(set(hut, 'k2', { screenAt: 'a' }), 'K2').screen).toBe('joined at Keyer · key out only'));
  it('says the adapter that a plug needs, fitted or not: R3 of the first draft', () =>
    expect(rowOf(sample('hut-first-draft'), 'R3').ends.map((end) => end.adapters)).toEqual([
      ['phono jack to BNC plug'],
      [],
    ]));
  it('leaves out what is made or tested where that is wanted', () => {
    const some = set(set(hut, 'd1', { status: 'made' }), 'd2', { status: 'tested' });
    const left = whatToMake(some, { leaveOutDone: true }).map((row) => row.number);
    expect(left).toHaveLength(hut.cables.length - 3);
    expect(left).not.toContain('D1');
    expect(left).not.toContain('D2');
  });
  it('a USB lead is bought, not made', () => {
    const usb = { ...hut.cables[0]!, kind: 'usb-lead' };
    const kinds = { 'usb-lead': { ...hut.cableKinds['key-lead']!, readyMade: true } };
    expect(whatToMake({ ...hut, cables: [usb], cableKinds: kinds }, all)).toEqual([]);
  });
});
