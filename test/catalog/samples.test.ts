import { describe, expect, it } from 'vitest';
import { fitOf } from '../../core/catalog/fit.ts';
import { shelf } from '../../core/catalog/kinds/index.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import { plugOf } from '../../core/station/plug-of.ts';
import type { CableEnd, Station } from '../../core/station/schema/schema.ts';
import { sample, sampleNames, sampleText } from '../stations/samples.ts';

describe.each(sampleNames)('sample %s', (name) => {
  it('reads without a problem and is written as it is', () => {
    const result = readStation(sampleText(name));
    expect('problems' in result ? result.problems : []).toEqual([]);
    expect(writeStation(sample(name))).toBe(sampleText(name));
  });

  it('has its units on the grid and apart from each other', () => {
    const at = sample(name).units.map((u) => u.position);
    // Half a step of the grid brings ports on alternate rows into line.
    for (const { x, y } of at) expect([x % 9, y % 9]).toEqual([0, 0]);
    expect(new Set(at.map(({ x, y }) => `${x} ${y}`)).size).toBe(at.length);
  });
});

const fits = (station: Station) =>
  station.cables.flatMap((cable) =>
    (['a', 'b'] as const).map((end: CableEnd) => {
      const kind = station.kinds[station.units.find((u) => u.id === cable[end].unit)!.kind]!;
      const port = kind.ports.find((p) => p.id === cable[end].port)!;
      return {
        cable: cable.number,
        end,
        fit: fitOf(station.connectors, plugOf(station, cable, end)!.id, port.connector).fit,
      };
    }),
  );

describe('the hut', () => {
  const hut = sample('hut');
  const draft = sample('hut-first-draft');

  it('put right: two hook-ups, seventeen cables, every plug in its own jack', () => {
    expect(hut.hookups.map((h) => h.name)).toEqual(['On the dummy load', 'On the air']);
    expect(hut.cables).toHaveLength(17);
    expect(fits(hut).filter(({ fit }) => fit !== 'mates')).toEqual([]);
  });

  it('as drawn first: the planted plugs, and no others, do not fit', () => {
    expect(fits(draft).filter(({ fit }) => fit !== 'mates')).toEqual([
      { cable: 'R3', end: 'a', fit: 'adapter' },
      { cable: 'A1', end: 'a', fit: 'misfit' },
      { cable: 'A1', end: 'b', fit: 'misfit' },
    ]);
    expect(draft.cables.some((c) => c.number === 'K4')).toBe(false);
    expect(draft.hookups).toHaveLength(1);
  });

  it('carries the kinds of the shelf as they are', () => {
    for (const station of [hut, draft]) {
      for (const [id, kind] of Object.entries(station.kinds)) {
        expect(kind).toEqual(shelf.find((item) => item.id === id)?.kind);
      }
    }
  });
});
