import { describe, expect, it } from 'vitest';
import type { Cable, Station } from '../../core/station/schema/schema.ts';
import type { Trouble } from './case.ts';
import { correct, troubles } from './index.ts';
import { alarmsOf, alarmsOfRight, missedBy } from './judge.ts';

/** A cable drawn from its other end. */
function turned({ a, b, plugs, adapters, wiring, fuse, screenAt, ...rest }: Cable): Cable {
  const swap = <T>(ends: { a?: T | undefined; b?: T | undefined }) => ({
    ...(ends.b !== undefined && { a: ends.b }),
    ...(ends.a !== undefined && { b: ends.a }),
  });
  return {
    ...rest,
    a: b,
    b: a,
    ...(plugs && { plugs: swap(plugs) }),
    ...(adapters && { adapters: swap(adapters) }),
    ...(wiring && { wiring: wiring.map((row) => ({ a: row.b, b: row.a })) }),
    ...(fuse && { fuse: { ...fuse, atM: rest.lengthM - fuse.atM } }),
    ...(screenAt && { screenAt: screenAt === 'a' ? ('b' as const) : ('a' as const) }),
  };
}

/** The plugs of a ready-made lead go with it when it is turned. */
function turnedCables(station: Station): Cable[] {
  return station.cables.map((cable) => {
    const ready = station.cableKinds[cable.kind]?.plugs;
    return turned(ready && !cable.plugs ? { ...cable, plugs: ready } : cable);
  });
}

const variants: Record<string, (station: Station) => Station> = {
  'drawn in the other order': (station) => ({
    ...station,
    units: [...station.units].reverse(),
    cables: [...station.cables].reverse(),
  }),
  'every cable drawn from its other end': (station) => ({ ...station, cables: turnedCables(station) }),
  'in the second of two hook-ups, the first one empty': (station) => ({
    ...station,
    hookups: [
      { id: 'empty', name: 'Empty' },
      { id: 'whole', name: 'Whole' },
    ],
    cables: station.cables.map((cable) => ({ ...cable, hookups: cable.hookups ?? ['whole'] })),
  }),
};

const asVariant = (trouble: Trouble, change: (station: Station) => Station): Trouble => ({
  ...trouble,
  wrong: change(trouble.wrong),
  right: change(trouble.right),
});

describe.each(Object.entries(variants))('%s', (name, change) => {
  // Stations with hook-ups of their own keep them.
  const isFree = (station: Station) => name.startsWith('in the second') === false || station.hookups.length === 0;
  const own = troubles.filter((t) => isFree(t.wrong) && isFree(t.right));
  it.each(own)('$id is caught all the same', (trouble) => expect(missedBy(asVariant(trouble, change))).toEqual([]));
  it.each(own)('$id put right is silent all the same', (trouble) =>
    expect(alarmsOfRight(asVariant(trouble, change))).toEqual([]),
  );
  it.each(correct.filter((c) => isFree(c.station)))('$id is silent all the same', ({ station }) =>
    expect(alarmsOf(change(station))).toEqual([]),
  );
});
