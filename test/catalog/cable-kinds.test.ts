import { describe, expect, it } from 'vitest';
import { cableKinds } from '../../core/catalog/cables/cable-kinds.ts';
import { connectors } from '../../core/catalog/connectors.ts';
import { wireLimitAmps, wireName, wireOhmsPerM } from '../../core/catalog/wire/wire.ts';
import { cableKindSchema } from '../../core/station/schema/cable-kind.ts';

describe.each(cableKinds)('cable kind $id', ({ kind }) => {
  it('is a cable kind with a source, and its plugs are known', () => {
    expect(cableKindSchema.parse(kind)).toEqual(kind);
    expect(kind.source).not.toBe('');
    for (const plug of Object.values(kind.plugs ?? {})) expect(connectors[plug], plug).toBeDefined();
  });

  it('has coax points that rise', () => {
    const points = kind.coax?.points ?? [];
    for (const [i, [mhz, db]] of points.entries()) {
      expect(mhz).toBeGreaterThan(points[i - 1]?.[0] ?? 0);
      expect(db).toBeGreaterThan(points[i - 1]?.[1] ?? 0);
    }
  });
});

it('ids are used once, and so are names', () => {
  expect(new Set(cableKinds.map((c) => c.id)).size).toBe(cableKinds.length);
  expect(new Set(cableKinds.map((c) => c.kind.name)).size).toBe(cableKinds.length);
});

describe('wire by its figures', () => {
  it.each([
    [{ awg: 24 }, 'AWG 24'],
    [{ awg: 0 }, 'AWG 1/0'],
    [{ awg: -3 }, 'AWG 4/0'],
    [{ mm2: 1.5 }, '1.5 mm²'],
    [{ ohmsPerM: 0.014 }, '14 mΩ/m'],
    [{}, 'wire of unknown size'],
  ])('%j is called %s', (wire, name) => {
    expect(wireName(wire)).toBe(name);
  });

  it('its own figures go before the tables', () => {
    expect(wireOhmsPerM({ awg: 14, ohmsPerM: 0.01 })).toBe(0.01);
    expect(wireLimitAmps({ awg: 14, ampacityA: 12 })).toEqual({ amps: 12, source: 'the cable’s own figure' });
  });

  it.each([
    // Between two gauges, and in square millimetres: the next thinner gauge.
    { wire: { awg: 17 }, amps: 7 },
    { wire: { awg: 23 }, amps: 2.5 },
    { wire: { mm2: 0.5 }, amps: 5 },
    { wire: { mm2: 0.75 }, amps: 5 },
    { wire: { mm2: 1 }, amps: 7 },
    { wire: { mm2: 1.5 }, amps: 10 },
    { wire: { mm2: 2.5 }, amps: 15 },
    { wire: { mm2: 4 }, amps: 20 },
    { wire: { mm2: 6 }, amps: 30 },
    { wire: { mm2: 16 }, amps: 70 },
    { wire: { mm2: 35 }, amps: 100 },
    { wire: { awg: -3 }, amps: 100 },
  ])('$wire may be fused at $amps A', ({ wire, amps }) => {
    expect(wireLimitAmps(wire)?.amps).toBe(amps);
  });

  it('thinner than 24 AWG the limit shrinks with the area, and says so; unknown wire has none', () => {
    // 3 gauges are a factor 92^(6/39) = 2.005 in area.
    expect(wireLimitAmps({ awg: 27 })?.amps).toBeCloseTo(2.5 / 2.005, 3);
    expect(wireLimitAmps({ awg: 27 })?.source).toContain('scaled by area');
    expect(wireLimitAmps({})).toBeNull();
  });

  it('a thicker wire never has a smaller limit', () => {
    const gauges = Array.from({ length: 39 }, (_, i) => wireLimitAmps({ awg: 35 - i })?.amps ?? 0);
    expect(gauges).toEqual(gauges.toSorted((a, b) => a - b));
  });
});
