import { describe, expect, it } from 'vitest';
import { kindOf } from '../../core/station/parts.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { everyReport, nonsense } from '../stations/every-report.ts';
import { sample } from '../stations/samples.ts';

/** Beyond what any field takes, at the limits of what one does, and next to nothing. */
const figures = [0, 1e-9, 1e9, 1e12, -1, -30, -1e12];

/** Every number that the elements of a station's units have, as `unit`, `element.field`. */
const placesOf = (station: Station): [unit: string, key: string][] =>
  station.units.flatMap((unit) =>
    kindOf(station, unit).elements.flatMap((element) =>
      Object.entries(element).flatMap(([field, value]): [string, string][] =>
        typeof value === 'number' ? [[unit.id, `${element.id}.${field}`]] : [],
      ),
    ),
  );

const withFigure = (station: Station, id: string, key: string, value: number): Station => ({
  ...station,
  units: station.units.map((u) => (u.id === id ? { ...u, overrides: { ...u.overrides, [key]: value } } : u)),
});

/** Every how many-th of all figures in all places is tried; a power-up sheet takes longer than all the rest. */
const samples = [
  { name: 'hut-first-draft', each: 29 },
  { name: 'old-and-new', each: 41 },
  { name: 'hill-table', each: 37 },
];

describe.each(samples)('a figure in $name that nobody would enter', ({ name, each }) => {
  const station = sample(name);
  const cases = placesOf(station).flatMap((place) => figures.map((value) => ({ place, value })));

  it('ends in figures and words', { timeout: 300_000 }, () => {
    const tried = cases.filter((_, i) => i % each === 0);
    expect(tried.length).toBeGreaterThan(15);
    for (const { place, value } of tried) {
      const given = withFigure(station, ...place, value);
      for (const { name: report, text } of everyReport(given, { withPowerUp: false, withFailures: false })) {
        if (report === 'file') continue;
        expect(
          text.split('\n').find((line) => nonsense.test(line)),
          `${place} = ${value}: ${report}`,
        ).toBeUndefined();
      }
    }
  });
});
