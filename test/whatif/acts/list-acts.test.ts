import { describe, expect, it } from 'vitest';
import { edit } from '../../../core/station/edit.ts';
import type { Hookup, Station } from '../../../core/station/schema/schema.ts';
import { easeOf } from '../../../core/whatif/acts/ease-of.ts';
import { listActs } from '../../../core/whatif/acts/list-acts.ts';
import { drawStation } from '../../stations/draw.ts';

const idsOf = (station: Station) => listActs(station).map(({ id }) => id);

const actIn = (station: Station, id: string) => {
  const act = listActs(station).find((one) => one.id === id);
  if (!act) throw new Error(`no act ${id}`);
  return act;
};

/** Two BNC leads at a changeover, whose phono plug at the receiver goes into jacks for keying, too. */
const changeover = drawStation({
  units: { over: 'changeover-by-line', rx: 'receiver-with-mute', tx: 'cw-transmitter-3w' },
  cables: ['tx.antenna > over.transmitter', 'over.receiver > rx.antenna'],
});

describe('what a hand could do by mistake', () => {
  it('is a plug in each free jack that it goes into, and two plugs exchanged where both go', () =>
    expect(idsOf(changeover).sort()).toEqual([
      // BNC: the transmitter's lead and the receiver's at the changeover.
      'exchanged r1.a r2.a',
      'exchanged r1.b r2.a',
      // The one free BNC jack, for each of three BNC plugs.
      'moved r1.a over.antenna',
      'moved r1.b over.antenna',
      'moved r2.a over.antenna',
      // The phono plug: every other phono jack, not one BNC jack, not the barrel jacks.
      'moved r2.b over.line',
      'moved r2.b over.mute',
      'moved r2.b rx.mute',
    ]));
  it('is told in words, and done by its change', () => {
    const act = actIn(changeover, 'moved r2.b rx.mute');
    expect(act.words).toBe('R2 in rx · mute instead of rx · antenna');
    expect(edit(changeover, act.change).cables.find(({ id }) => id === 'r2')).toMatchObject({
      a: { unit: 'over', port: 'receiver' },
      b: { unit: 'rx', port: 'mute' },
    });
    expect(actIn(changeover, 'exchanged r1.b r2.a').words).toBe('R1 and R2 exchanged at over');
  });
});

describe('outlets of one strip', () => {
  const drawn = (amps: number | null) =>
    drawStation({
      units: {
        strip: { kind: 'fused-strip', ...(amps !== null && { overrides: { 'fuse-one.fuseAmps': amps } }) },
        tx: 'cw-transmitter-3w',
      },
      cables: ['strip.one > tx.power'],
    });
  const moves = (station: Station) => idsOf(station).filter((id) => id.startsWith('moved'));
  it('with the same fuse are one and the same', () => expect(moves(drawn(null))).toEqual([]));
  it('with another one are tried once for all three', () => expect(moves(drawn(2))).toEqual(['moved d1.a strip.two']));
  it('with a ring at one of the three it is tried for both sorts', () => {
    const ringed = edit(drawn(2), { type: 'updateUnit', id: 'strip', set: { rings: { three: 'BU' } } });
    expect(moves(ringed)).toEqual(['moved d1.a strip.two', 'moved d1.a strip.three']);
  });
});

describe('hook-ups', () => {
  const hookups: Hookup[] = [
    { id: 'air', name: 'On the air' },
    { id: 'dummy', name: 'On the dummy load' },
  ];
  const drawn = (second: string) =>
    drawStation({
      units: { meter: 'swr-meter', one: 'manual-tuner', two: 'manual-tuner' },
      hookups,
      cables: [
        ['meter.antenna > one.transmitter', { hookups: ['air'] }],
        ['meter.transmitter > two.transmitter', { hookups: [second] }],
      ],
    });
  it('two leads that are never plugged in together are not exchanged', () => {
    expect(idsOf(drawn('air'))).toContain('exchanged r1.a r2.a');
    expect(idsOf(drawn('dummy')).filter((id) => id.startsWith('exchanged'))).toEqual([]);
  });
  it('a jack that is taken in another hook-up is free in this one', () => {
    expect(idsOf(drawn('air'))).not.toContain('moved r1.a meter.transmitter');
    expect(idsOf(drawn('dummy'))).toContain('moved r1.a meter.transmitter');
  });
});

describe('a drawing to scale', () => {
  /** Three in a row, so many metres from one to the next, with a lead of 1 m between the first two. */
  const row = (apartM: number): Station => {
    const drawn = drawStation({
      units: { tx: 'cw-transmitter-3w', near: 'changeover-by-line', far: 'changeover-by-line' },
      cables: [['tx.antenna > near.transmitter', { lengthM: 1 }]],
    });
    const units = drawn.units.map((unit, i) => ({ ...unit, position: { x: i * 100, y: 0 } }));
    return { ...drawn, units, settings: { ...drawn.settings, metresPerUnit: apartM / 100 } };
  };
  it('a lead goes where it is long enough for', () => {
    // 0.4 m and 0.8 m from the transmitter: 1 m of lead reaches both.
    expect(idsOf(row(0.4))).toContain('moved r1.b far.transmitter');
    // 0.7 m and 1.4 m.
    expect(idsOf(row(0.7))).not.toContain('moved r1.b far.transmitter');
    expect(idsOf(row(0.7))).toContain('moved r1.b near.receiver');
  });
  it('without a scale everything is in reach', () => {
    const { metresPerUnit: _, ...settings } = row(0.7).settings;
    expect(idsOf({ ...row(0.7), settings })).toContain('moved r1.b far.transmitter');
  });
});

it('the cores of a lead are crossed where nothing has a key', () => {
  const station = drawStation({
    units: { supply: 'bench-supply', strip: 'fused-strip', tx: 'cw-transmitter-3w' },
    cables: ['supply.out > strip.input', 'strip.one > tx.power'],
  });
  // Posts and studs at both ends of D1; D2 has a two-pole plug with a key and a barrel plug.
  expect(idsOf(station)).toEqual(['crossed d1']);
  expect(easeOf(station, actIn(station, 'crossed d1')).words).toEqual(['nothing keeps plus from going on minus']);
});

describe('how easily it happens', () => {
  const ease = (id: string) => easeOf(changeover, actIn(changeover, id));
  it('is said in words', () => {
    expect(ease('exchanged r1.b r2.a').words).toEqual([
      'two alike jacks on one panel',
      // Both are the coax that is laid where nothing else is said.
      'the two leads look the same',
    ]);
    expect(ease('moved r2.b over.line').words).toEqual(['the two jacks are alike']);
  });
  it('is more on one panel than between two units', () =>
    expect(ease('moved r2.b rx.mute').score).toBeGreaterThan(ease('moved r2.b over.mute').score));
  it('is more for what is plugged in anew between hook-ups', () => {
    const id = 'moved r1.b over.antenna';
    const hookups: Hookup[] = [
      { id: 'air', name: 'On the air' },
      { id: 'dummy', name: 'On the dummy load' },
    ];
    const often = {
      ...changeover,
      hookups,
      cables: changeover.cables.map((c) => (c.id === 'r1' ? { ...c, hookups: ['air'] } : c)),
    };
    const [seldom, now] = [ease(id), easeOf(often, actIn(often, id))];
    expect(now.score).toBeGreaterThan(seldom.score);
    expect(now.words).toContain('it is plugged in anew between hook-ups');
  });
});
