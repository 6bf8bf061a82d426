import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asKept, type Limit, limitProblem, limits } from '../../core/quantity/limits.ts';
import { type Change, edit } from '../../core/station/edit.ts';
import { readStation } from '../../core/station/file/read-station.ts';
import { savedText } from '../../core/station/file/saved-text.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
import { limitOfOwnFigure } from '../../core/station/own-figure.ts';
import type { Cable, Plan, Station } from '../../core/station/schema/schema.ts';
import { type TextSort, textProblem } from '../../core/station/schema/text-problem.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const [unit, cable, hookup] = [hut.units[0], hut.cables[0], hut.hookups[0]];
if (!unit || !cable || !hookup) throw new Error('the hut has all of these');

/** What each field of the screen does with a text or number that its check lets through. */
const texts: [name: string, sort: TextSort, make: (text: string) => Change][] = [
  ['title', 'line', (title) => ({ type: 'describe', set: { title } })],
  ['notes', 'text', (notes) => ({ type: 'describe', set: { notes } })],
  ['unit name', 'line', (name) => ({ type: 'updateUnit', id: unit.id, set: { name } })],
  ['unit note', 'text', (note) => ({ type: 'updateUnit', id: unit.id, set: { note } })],
  ['cable number', 'line', (number) => ({ type: 'updateCable', id: cable.id, set: { number } })],
  ['cable note', 'text', (note) => ({ type: 'updateCable', id: cable.id, set: { note } })],
  ['hook-up', 'line', (name) => ({ type: 'updateHookup', id: hookup.id, set: { name } })],
  ['reason', 'text', (reason) => ({ type: 'accept', acceptance: { finding: 'a:b', reason, figures: '' } })],
];

const plan = (set: Partial<Plan>): Change => ({ type: 'setPlan', set });
const settings = (set: Station['settings']): Change => ({ type: 'describe', set: { settings: set } });
const ofCable = (set: Partial<Cable>): Change => ({ type: 'updateCable', id: cable.id, set });
const fuse = (set: Partial<NonNullable<Cable['fuse']>>): Change =>
  ofCable({ fuse: { amps: 1, family: 'blade', atM: 0, ...set } });

const figures: [name: string, limit: Limit, make: (n: number) => Change][] = [
  ['frequency', limits.planHertz, (frequencyHz) => plan({ frequencyHz })],
  ['speed', limits.speedWpm, (speedWpm) => plan({ speedWpm })],
  ['duty', limits.share, (duty) => plan({ duty })],
  ['hours a day', limits.hoursPerDay, (hoursPerDay) => plan({ hoursPerDay })],
  ['drop', limits.share, (maxDrop) => settings({ maxDrop })],
  ['air', limits.celsius, (ambientCelsius) => settings({ ambientCelsius })],
  ['bundle', limits.bundled, (bundled) => settings({ bundled })],
  ['length', limits.metres, (lengthM) => ofCable({ lengthM })],
  ['fuse', limits.fuseAmps, (amps) => fuse({ amps })],
  ['fuse place', limits.metres, (atM) => fuse({ atM })],
  ['fuse breaks', limits.amps, (breakingAmps) => fuse({ breakingAmps })],
  ...hut.units.flatMap((u) => ownFigures(u.id)),
];

/** Every figure of a unit that the user may replace. */
function ownFigures(id: string): typeof figures {
  const kind = hut.kinds[hut.units.find((u) => u.id === id)?.kind ?? ''];
  if (!kind) return [];
  const keys = kind.elements.flatMap((e) => Object.keys(e).map((field) => `${e.id}.${field}`));
  return keys.flatMap((key): typeof figures => {
    const limit = limitOfOwnFigure(kind, key);
    return limit
      ? [[`${id} ${key}`, limit, (n) => ({ type: 'updateUnit', id, set: { overrides: { [key]: n } } })]]
      : [];
  });
}

const isRead = (station: Station): boolean => 'text' in savedText(station);

/** Any code point but half a pair. The unit 'binary' is the same, after a second for a table of them all. */
const anyCodePoint = fc
  .integer({ min: 0, max: 0x10ffff - 0x800 })
  .map((n) => String.fromCodePoint(n < 0xd800 ? n : n + 0x800));

const anyText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 30 }),
  fc.string({ unit: anyCodePoint, maxLength: 30 }),
  fc.string({ unit: fc.integer({ min: 0, max: 0xffff }).map((n) => String.fromCharCode(n)), maxLength: 30 }),
);

describe('what the app lets one type, its own reader takes back, and refuses what it refuses', () => {
  it.each(texts)('%s', (_name, sort, make) => {
    fc.assert(
      fc.property(anyText, (text) => {
        // No field takes nothing but spaces; that has a sentence of its own.
        fc.pre(text.trim() !== '');
        expect(isRead(edit(hut, make(text)))).toBe(textProblem(text, sort) === undefined);
      }),
      { numRuns: 40 },
    );
  });

  it('figures, by their row of the table', () => {
    expect(figures.length).toBeGreaterThan(80);
    const near = ({ least, most }: Limit) =>
      fc.oneof(
        fc.double({ min: least, max: most, noNaN: true }),
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.constantFrom(least, most, -most, 0, -0, least - 1, most + 1),
      );
    const one = fc.constantFrom(...figures).chain((row) => fc.tuple(fc.constant(row), near(row[1])));
    fc.assert(
      fc.property(one, ([[_name, limit, make], typed]) => {
        const kept = asKept(typed, limit);
        expect(isRead(edit(hut, make(kept)))).toBe(limitProblem(kept, limit) === undefined);
      }),
      { numRuns: 150 },
    );
  });
});

describe('a text to save', () => {
  it('is the file’s, where the reader makes the same of it', () => {
    expect(savedText(hut)).toEqual({ text: writeStation(hut) });
  });
  it('is not there where it could not be opened again; what keeps it from that is told', () => {
    const broken = edit(hut, ofCable({ lengthM: -1 }));
    expect(savedText(broken)).toMatchObject({ problems: [{ place: expect.stringMatching(/\.lengthM$/) }] });
    const bad = edit(hut, { type: 'updateUnit', id: unit.id, set: { overrides: { 'output.volts': Number.NaN } } });
    expect(savedText(bad)).toHaveProperty('problems');
  });
  it('is not there where it would become something else', () => {
    const kind = hut.kinds['changeover-by-line'];
    const key = `${kind?.elements.find((e) => e.type === 'rfPath')?.id}.isolationDb`;
    const id = hut.units.find((u) => u.kind === 'changeover-by-line')?.id ?? '';
    const turned = edit(hut, { type: 'updateUnit', id, set: { overrides: { [key]: -30 } } });
    expect(savedText(turned)).toMatchObject({ problems: [{ place: 'file' }] });
    expect(readStation(writeStation(turned))).toHaveProperty('station');
  });
});
