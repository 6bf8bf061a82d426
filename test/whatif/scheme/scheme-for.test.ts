import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeChange } from '../../../core/reports/changes/describe-change.ts';
import { edit } from '../../../core/station/edit.ts';
import { remember } from '../../../core/station/remember.ts';
import { ringAt } from '../../../core/station/ring-at.ts';
import type { Station } from '../../../core/station/schema/schema.ts';
import { studyMixUps } from '../../../core/whatif/acts/study-mix-ups.ts';
import { applyMeasures } from '../../../core/whatif/scheme/apply-measures.ts';
import { schemeFor } from '../../../core/whatif/scheme/scheme-for.ts';
import { drawStation } from '../../stations/draw.ts';
import { generateStation } from '../../stations/generate.ts';
import { sample } from '../../stations/samples.ts';

/** The kinds of act that no ring prevents. */
const beyondRings = ['crossed', 'switched'];

/** A study takes seconds: each station is studied once. */
const studied = remember((station: Station) => studyMixUps(station));

const dangersOf = (station: Station) => studied(station).mixUps.filter(({ severity }) => severity === 'danger');

/** The study of a station, its scheme, and the station with all of its measures. */
function ringed(station: Station) {
  const study = studied(station);
  const scheme = schemeFor(study, station);
  const after = edit(station, applyMeasures(station, scheme.measures));
  return { study, scheme, after };
}

describe('after all measures of a scheme', () => {
  it.each(['hut', 'hill-table'])('%s has no danger left that a ring can tell', (name) => {
    const { scheme, after } = ringed(sample(name));
    expect(scheme.measures.length).toBeGreaterThan(0);
    expect(scheme.exact).toBe(true);
    const left = dangersOf(after).map(({ act }) => act);
    expect(left.filter(({ kind }) => !beyondRings.includes(kind))).toEqual([]);
    expect(left.map(({ id }) => id)).toEqual(scheme.left.map(({ act }) => act.id));
    // Nothing is left to do: the scheme of the ringed station is empty.
    expect(schemeFor(studied(after), after).measures).toEqual([]);
  });
  it('no station drawn at random has one but those that are said to be left', () => {
    const small = fc.tuple(fc.integer({ min: 6, max: 14 }), fc.nat({ max: 1000 }));
    fc.assert(
      fc.property(small, ([size, seed]) => {
        const { scheme, after } = ringed(generateStation(size, seed));
        const said = new Set(scheme.left.flatMap(({ act, alike }) => [act, ...alike]).map(({ id }) => id));
        expect(dangersOf(after).filter(({ act }) => !said.has(act.id))).toEqual([]);
      }),
      { numRuns: 4 },
    );
  });
});

describe('the hut', () => {
  const { study, scheme, after } = ringed(sample('hut'));
  it('needs each ring: without any one of them a danger is back', () => {
    for (const one of scheme.measures) {
      const others = scheme.measures.filter((m) => m !== one);
      const without = edit(sample('hut'), applyMeasures(sample('hut'), others));
      const count = dangersOf(without).length;
      expect(count, one.words).toBeGreaterThan(scheme.left.length);
    }
  });
  it('counts what the rings prevent, and tries the rest', () => {
    const again = studied(after);
    expect(again.prevented).toBeGreaterThan(0);
    expect(again.tried + again.prevented).toBe(study.tried + study.prevented);
  });
  it('is told of each ring in words, with the letters of its colour', () => {
    const words = describeChange(sample('hut'), applyMeasures(sample('hut'), scheme.measures)).map(
      (line) => line.words,
    );
    expect(words).toHaveLength(scheme.measures.flatMap(({ ports }) => ports).length);
    expect(words).toContain('Receiver · power: ring none → blue (BU)');
  });
  it('gets two rings at one unit by one edit', () => {
    const two = scheme.measures.filter(({ ports: [{ unit }] }) => unit === 'receiver');
    expect(two.length).toBeGreaterThan(1);
    const done = edit(sample('hut'), applyMeasures(sample('hut'), two));
    for (const { ports, colour } of two) expect(ringAt(done, ports[0])).toBe(colour);
  });
});

describe('rings that are there', () => {
  const station = sample('hut');
  const first = studied(station).mixUps.find(({ act, severity }) => act.kind === 'exchanged' && severity === 'danger');
  const ports = (first?.act.at ?? []).flatMap((place) =>
    'unit' in place && place.port !== undefined ? [{ unit: place.unit, port: place.port }] : [],
  );
  const alike = ports.reduce((so, { unit, port }) => {
    const rings = { ...so.units.find((u) => u.id === unit)?.rings, [port]: 'YE' as const };
    return edit(so, { type: 'updateUnit', id: unit, set: { rings } });
  }, station);
  it('of the same colour at two jacks prevent nothing, and one of them changes', () => {
    expect(ports).toHaveLength(2);
    expect(studied(alike).mixUps.map(({ act }) => act.id)).toContain(first?.act.id);
    const { after } = ringed(alike);
    const colours = ports.map((ref) => ringAt(after, ref));
    expect(colours[0]).not.toBe(colours[1]);
    expect(dangersOf(after).filter(({ act }) => !beyondRings.includes(act.kind))).toEqual([]);
  });
  it('stay where nothing speaks against them', () => {
    const [one] = ports;
    const single = edit(station, { type: 'updateUnit', id: one!.unit, set: { rings: { [one!.port]: 'YE' } } });
    expect(ringAt(ringed(single).after, one!)).toBe('YE');
  });
});

it('a station in which nothing can go wrong gets no rings', () => {
  const station = drawStation({ units: { supply: 'bench-supply' } });
  expect(schemeFor(studied(station), station)).toEqual({ measures: [], exact: true, left: [] });
});
