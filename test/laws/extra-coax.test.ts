import { describe, expect, it } from 'vitest';
import { layCable } from '../../core/catalog/laying/lay-cable.ts';
import { edit } from '../../core/station/edit.ts';
import { kindOf } from '../../core/station/parts.ts';
import type { PortRef, Station } from '../../core/station/schema/schema.ts';
import { survey } from '../../core/survey.ts';
import { sample } from '../stations/samples.ts';

/** How many pairs of RF ports there are in stations with an amplifier, and every how many-th is tried: a survey each. */
const stations = [
  { name: 'hut-amplifier', pairs: 105, each: 5 },
  { name: 'old-and-new', pairs: 120, each: 6 },
  { name: 'two-metre-mast', pairs: 253, each: 11 },
];

function pairsOf(station: Station): [PortRef, PortRef][] {
  const ports = station.units.flatMap((unit) =>
    kindOf(station, unit).ports.flatMap((port) => (port.class === 'rf' ? [{ unit: unit.id, port: port.id }] : [])),
  );
  return ports.flatMap((a, i) => ports.slice(i + 1).map((b): [PortRef, PortRef] => [a, b]));
}

describe.each(stations)('one more coax between any two RF ports of $name', ({ name, pairs, each }) => {
  const station = sample(name);
  const all = pairsOf(station);
  const before = new Set(survey(station).findings.map((f) => f.id));

  it('is surveyed, and where it lets an amplifier feed itself that is told', () => {
    expect(all).toHaveLength(pairs);
    let rings = 0;
    for (const [a, b] of all.filter((_, i) => i % each === 0)) {
      const { findings } = survey(edit(station, layCable(station, a, b)));
      // A port that holds two plugs, or a unit whose output is its input: nobody is told that all is well.
      expect(
        findings.filter((f) => f.severity !== 'note' && !before.has(f.id)),
        `${a.unit}.${a.port} to ${b.unit}.${b.port}`,
      ).not.toEqual([]);
      if (findings.some((f) => f.rule === 'rf/rf-feedback')) rings++;
    }
    expect(rings).toBeGreaterThan(0);
  });
});
