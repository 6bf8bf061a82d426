import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { generateStation } from './generate.ts';
import { anyStation } from './random-station.ts';

// What other tests compute with is not to be what no file can hold. It is read back here and not wherever it is drawn:
// that takes as long as trying it, and the same seed draws the same stations everywhere.
function expectHeld(station: Station) {
  const text = writeStation(station);
  const read = readStation(text);
  if ('problems' in read) throw new Error(read.problems.map((p) => `${p.place}: ${p.message}`).join('\n'));
  expect(writeStation(read.station)).toBe(text);
}

describe('a file holds', () => {
  it('any station drawn at random', () => fc.assert(fc.property(anyStation, expectHeld), { numRuns: 120 }));
  it.each([12, 20, 25, 60, 120, 200, 500])('a generated station of %i units', (units) =>
    expectHeld(generateStation(units)),
  );
  it('generated stations of any size and figures', () => {
    const generated = fc.tuple(fc.integer({ min: 12, max: 30 }), fc.nat({ max: 10_000 }));
    fc.assert(
      fc.property(generated, ([units, seed]) => expectHeld(generateStation(units, seed))),
      {
        numRuns: 40,
      },
    );
  });
});
