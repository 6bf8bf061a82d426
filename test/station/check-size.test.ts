import { describe, expect, it } from 'vitest';
import { connectors } from '../../core/catalog/connectors.ts';
import { createStation } from '../../core/station/create-station.ts';
import { checkSize } from '../../core/station/file/check/check-size.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Connector } from '../../core/station/schema/connector.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import type { UnitKind } from '../../core/station/schema/unit-kind.ts';
import { made } from '../rules/made.ts';
import { generateStation } from '../stations/generate.ts';
import { sample } from '../stations/samples.ts';

const position = { x: 0, y: 0 };

/** So many units of one kind. */
const alike = (count: number, kind: UnitKind): Station => ({
  ...createStation('Heavy'),
  units: Array.from({ length: count }, (_, i) => ({ id: `u${i}`, kind: 'k', name: `u${i}`, position })),
  kinds: { k: kind },
  connectors: { 'two-pole-15': connectors['two-pole-15'] as Connector },
});

const many = <T>(count: number, item: (i: number) => T): T[] => Array.from({ length: count }, (_, i) => item(i));

const supplies = (count: number): UnitKind =>
  made(
    { out: ['dc', 'two-pole-15'] },
    many(count, (i) => ({
      id: `s${i}`,
      type: 'supply',
      plus: 'out.plus',
      minus: 'out.minus',
      volts: 13.8,
      sourceOhms: 0.01,
      amps: 10,
      peakAmps: 12,
      beyond: 'limits',
    })),
  );

const ports = (count: number): UnitKind =>
  made(Object.fromEntries(many(count, (i) => [`p${i}`, ['earth', 'two-pole-15'] as ['earth', string]])), []);

describe('more than a survey can take is refused with the number', () => {
  it.each([
    ['3,000 supplies in one kind', alike(1, supplies(3000)), 'There are 3000 supplies, batteries and converters'],
    ['300 units of ten supplies each', alike(300, supplies(10)), 'There are 3000 supplies, batteries and converters'],
    ['one port more than there may be', alike(601, ports(100)), 'There are 60100 ports'],
  ])('%s', (_, station, message) => {
    const [problem, ...others] = checkSize(station);
    expect(problem?.place).toBe('units');
    expect(problem?.message).toContain(message);
    expect(problem?.message).toMatch(/at most \d+ can be surveyed/);
    expect(others).toEqual([]);
  });
  it('a file with as much is not read', () => {
    const read = readStation(writeStation(alike(1, supplies(3000))));
    expect('problems' in read && read.problems.map((p) => p.message)).toEqual(
      expect.arrayContaining([expect.stringContaining('3000 supplies')]),
    );
  });
});

describe('what people draw is taken', () => {
  it.each([
    ['five hundred units', generateStation(500, 1)],
    ['two thousand units', generateStation(2000, 1)],
    ['a hall', sample('club-hall')],
    ['a kind that no unit is of', { ...alike(1, supplies(1)), kinds: { k: supplies(1), spare: supplies(3000) } }],
  ])('%s', (_, station) => expect(checkSize(station)).toEqual([]));
});
