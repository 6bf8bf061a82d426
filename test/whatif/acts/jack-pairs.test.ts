import { describe, expect, it } from 'vitest';
import { edit } from '../../../core/station/edit.ts';
import type { RingColour } from '../../../core/station/schema/ring-colour.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { isPrevented } from '../../../core/whatif/acts/jack-pairs.ts';
import { listActs } from '../../../core/whatif/acts/list-acts.ts';
import { studyMixUps } from '../../../core/whatif/acts/study-mix-ups.ts';
import { drawStation } from '../../stations/draw.ts';
import { sample } from '../../stations/samples.ts';

/** A station with rings at some ports, `unit.port`. */
const ringed = (station: Station, rings: Record<string, RingColour>): Station =>
  Object.entries(rings).reduce((so, [ref, ring]) => {
    const [unit = '', port = ''] = ref.split('.');
    const now = so.units.find(({ id }) => id === unit)?.rings;
    return edit(so, { type: 'updateUnit', id: unit, set: { rings: { ...now, [port]: ring } } });
  }, station);

const preventedIn = (station: Station) =>
  listActs(station)
    .filter((act) => isPrevented(station, act))
    .map(({ id }) => id)
    .sort();

const changeover = drawStation({
  units: { over: 'changeover-by-line', rx: 'receiver-with-mute', tx: 'cw-transmitter-3w' },
  cables: ['tx.antenna > over.transmitter', 'over.receiver > rx.antenna'],
});

describe('rings prevent', () => {
  it('nothing where there are none', () => expect(preventedIn(changeover)).toEqual([]));
  it('nothing between two jacks of the same colour', () =>
    expect(
      preventedIn(ringed(changeover, { 'over.transmitter': 'BU', 'over.receiver': 'BU', 'tx.antenna': 'BU' })),
    ).toEqual(['moved r1.a over.antenna', 'moved r1.b over.antenna', 'moved r2.a over.antenna']));
  it('a plug with a ring in a jack without one, and the other way round', () => {
    expect(preventedIn(ringed(changeover, { 'rx.antenna': 'BU' }))).toEqual([
      'moved r2.b over.line',
      'moved r2.b over.mute',
      'moved r2.b rx.mute',
    ]);
    expect(preventedIn(ringed(changeover, { 'rx.mute': 'BU' }))).toEqual(['moved r2.b rx.mute']);
  });
  it('no crossed cores and no switch', () => {
    const crossed = drawStation({
      units: { supply: 'bench-supply', strip: 'fused-strip' },
      cables: ['supply.out > strip.input'],
    });
    expect(preventedIn(ringed(crossed, { 'supply.out': 'BU', 'strip.input': 'OG' }))).toEqual([]);
  });
  it('a lead laid the other way round where its two jacks differ', () => {
    const coax = drawStation({
      units: { meter: 'swr-meter', tuner: 'manual-tuner' },
      cables: [['meter.antenna > tuner.transmitter', { screenAt: 'a' }]],
    });
    expect(preventedIn(coax)).toEqual([]);
    const rings = { 'meter.antenna': 'BU', 'tuner.transmitter': 'OG' } as const;
    expect(preventedIn(ringed(coax, rings))).toContain('turned r1');
  });
});

describe('the study of a station with rings', () => {
  const hut = sample('hut');
  const before = studyMixUps(hut);
  const after = studyMixUps(ringed(hut, { 'changeover.receiver': 'BU' }));
  it('counts what they prevent and lists none of it', () => {
    expect(before.prevented).toBe(0);
    expect(after.prevented).toBeGreaterThan(0);
    expect(after.tried + after.prevented).toBe(before.tried);
    const listed = after.mixUps.flatMap(({ act, alike }) => [act, ...alike]);
    expect(listed.filter((act) => isPrevented(ringed(hut, { 'changeover.receiver': 'BU' }), act))).toEqual([]);
  });
  it('says of the rest what it said before', () => {
    const said = (study: typeof before) =>
      new Map(
        study.mixUps.flatMap(({ act, alike, harms }) =>
          [act, ...alike].map(({ id }) => [id, harms.map((f) => f.rule)]),
        ),
      );
    const earlier = said(before);
    for (const [id, rules] of said(after)) expect([id, rules]).toEqual([id, earlier.get(id)]);
  });
});
