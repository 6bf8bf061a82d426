import { describe, expect, it } from 'vitest';
import { wiringOf } from '../../core/catalog/cables/wiring-of.ts';
import { connectors } from '../../core/catalog/connectors.ts';
import { fitOf, judgePair } from '../../core/catalog/fit.ts';
import type { Cable, PortRef } from '../../core/station/schema/schema.ts';
import { sample } from '../stations/samples.ts';

const joined = (...pairs: string[]) => pairs.map((pair) => pair.split('-'));

describe('two connector halves', () => {
  it.each([
    { plug: 'bnc-plug', jack: 'bnc-jack', fit: 'mates', joins: joined('centre-centre', 'shell-shell') },
    { plug: 'two-pole-15', jack: 'two-pole-30', fit: 'mates', joins: joined('plus-plus', 'minus-minus') },
    { plug: 'ring-terminals', jack: 'binding-posts', fit: 'mates', joins: joined('plus-plus', 'minus-minus') },
    {
      plug: 'stereo-635-socket',
      jack: 'stereo-635-plug',
      fit: 'mates',
      joins: joined('tip-tip', 'ring-ring', 'sleeve-sleeve'),
    },
    {
      plug: 'mono-35-plug',
      jack: 'stereo-35-jack',
      fit: 'misfit',
      joins: joined('tip-tip', 'sleeve-sleeve', 'sleeve-ring'),
    },
    // The plug on the unit: the same joint seen from the socket of the cable.
    { plug: 'mono-635-socket', jack: 'stereo-635-plug', fit: 'misfit', joins: joined('tip-tip', 'sleeve-sleeve') },
    { plug: 'stereo-35-plug', jack: 'mono-35-jack', fit: 'misfit', joins: joined('tip-tip', 'sleeve-sleeve') },
    { plug: 'barrel-25-plug', jack: 'barrel-21-jack', fit: 'misfit', joins: joined('centre-centre', 'shell-shell') },
    { plug: 'banana-pair', jack: 'uhf-jack', fit: 'misfit', joins: joined('plus-centre') },
    { plug: 'phono-plug', jack: 'bnc-jack', fit: 'adapter', joins: joined('centre-centre', 'shell-shell') },
    { plug: 'two-pole-15', jack: 'barrel-21-jack', fit: 'adapter', joins: joined('plus-centre', 'minus-shell') },
    { plug: 'barrel-21-plug', jack: 'uhf-jack', fit: 'none', joins: [] },
    { plug: 'earth-lug', jack: 'phono-jack', fit: 'none', joins: [] },
    { plug: 'unheard-of', jack: 'phono-jack', fit: 'none', joins: [] },
  ])('$plug in $jack: $fit', ({ plug, jack, fit, joins }) => {
    const result = fitOf(connectors, plug, jack);
    expect(result.fit).toBe(fit);
    expect(result.joins).toEqual(joins);
    expect(result.why === '').toBe(fit === 'mates');
    expect(result.chain !== undefined).toBe(fit === 'adapter');
  });

  it('says where a misfit does no harm', () => {
    expect(fitOf(connectors, 'stereo-35-plug', 'mono-35-jack').harmless).toBe(true);
    expect(fitOf(connectors, 'mono-35-plug', 'stereo-35-jack').harmless).toBe(false);
  });
});

const hut = sample('hut');
const port = (text: string): PortRef => ({ unit: text.split('.')[0]!, port: text.split('.')[1]! });

describe('two ports of the hut', () => {
  it.each([
    ['transmitter.antenna', 'changeover.transmitter', 'mates'],
    ['transmitter.antenna', 'meter.antenna', 'mates'],
    ['strip.four', 'receiver.power', 'mates'],
    ['receiver.phones', 'phones.plug', 'mates'],
    // A phono lead goes into the mute and the antenna jack alike.
    ['receiver.mute', 'receiver.antenna', 'misfit'],
    ['changeover.line', 'receiver.antenna', 'misfit'],
    ['transmitter.key', 'receiver.antenna', 'adapter'],
    ['changeover.mute', 'changeover.antenna', 'adapter'],
    ['supply.out', 'receiver.phones', 'none'],
    ['paddle.out', 'paddle.out', 'none'],
  ])('%s and %s: %s', (a, b, fit) => {
    const verdict = judgePair(hut, port(a), port(b));
    expect(verdict.fit).toBe(fit);
    expect(verdict.why === '').toBe(fit === 'mates');
  });
});

describe('the conductors of a cable', () => {
  const wires = (number: string, station = hut) =>
    wiringOf(station, station.cables.find((c) => c.number === number)!).map((w) => `${w.a}–${w.b} ${w.role}`);

  it.each([
    ['D2', ['plus–centre live', 'minus–shell return']],
    ['D4', ['plus–shell live', 'minus–centre return']],
    ['R4', ['centre–centre live', 'shell–shell return']],
    ['K1', ['tip–tip live', 'sleeve–sleeve return', 'ring–ring second']],
    ['K2', ['tip–centre live', 'sleeve–shell return']],
    ['E1', ['earth–earth return']],
  ])('%s', (number, rows) => {
    expect(wires(number)).toEqual(rows);
  });

  it('a lead with too few cores has its live core and its return', () => {
    const thin = { ...hut, cables: hut.cables.map((c) => (c.number === 'K1' ? { ...c, kind: 'key-lead' } : c)) };
    expect(wires('K1', thin)).toEqual(['tip–tip live', 'sleeve–sleeve return']);
  });

  it('drawn from a jack with its centre minus, the core on the contact called plus is still the live one', () => {
    const turn = ({ a, b, wiring = [], ...rest }: Cable): Cable => ({
      ...rest,
      a: b,
      b: a,
      wiring: wiring.map((row) => ({ a: row.b, b: row.a })),
    });
    const turned = { ...hut, cables: hut.cables.map((c) => (c.number === 'D4' ? turn(c) : c)) };
    expect(wires('D4', turned)).toEqual(['shell–plus live', 'centre–minus return']);
  });

  it('with plus and minus crossed one core is live and one is not', () => {
    const wiring = [
      { a: 'plus', b: 'minus' },
      { a: 'minus', b: 'plus' },
    ];
    const crossed = { ...hut, cables: hut.cables.map((c) => (c.number === 'D1' ? { ...c, wiring } : c)) };
    expect(wires('D1', crossed)).toEqual(['plus–minus live', 'minus–plus return']);
  });
});
