import { describe, expect, it } from 'vitest';
import { fitText } from '../../../core/reports/flags/fit-text.ts';
import { type FlagSheet, usualFlagSheet } from '../../../core/reports/flags/flag-sheet.ts';
import { flagsOf, flagTable, linesOf } from '../../../core/reports/flags/flag-text.ts';
import { labelGrid } from '../../../core/reports/flags/label-grid.ts';
import { layOutFlags } from '../../../core/reports/flags/lay-out-flags.ts';
import { edit } from '../../../core/station/edit.ts';
import { sample } from '../../stations/samples.ts';

/** Type in which every letter is half as wide as the type is high. */
const measure = (text: string, sizeMm: number) => text.length * 0.5 * sizeMm;
const limits = { largestMm: 4, smallestMm: 2 };

describe('the text of flags', () => {
  it('both flags of every cable of a sample, near end first', () => {
    for (const name of ['hut', 'hut-first-draft'] as const) {
      const station = sample(name);
      const flags = flagsOf(station);
      const ends = flags.map(({ cable, end }) => `${cable}.${end}`);
      expect(ends.sort()).toEqual(station.cables.flatMap(({ id }) => [`${id}.a`, `${id}.b`]).sort());
    }
    const [a, b] = flagsOf(sample('hut'), ['d4']);
    expect(linesOf(a!)).toEqual(['D4', 'Fused strip · 3', '→ Receiver · power']);
    expect(linesOf(b!)).toEqual(['D4', 'Receiver · power', '→ Fused strip · 3']);
    expect(a!.rings).toEqual(['RD', 'YE']);
  });
  it('say the ring of the jack at their own end, in letters', () => {
    const ringed = edit(sample('hut'), { type: 'updateUnit', id: 'receiver', set: { rings: { power: 'BU' } } });
    const [a, b] = flagsOf(ringed, ['d4']);
    expect(linesOf(a!)).toEqual(['D4', 'Fused strip · 3', '→ Receiver · power']);
    expect(linesOf(b!)).toEqual(['D4, ring BU', 'Receiver · power', '→ Fused strip · 3']);
    expect(b!.rings).toEqual(['RD', 'YE']);
    const { head, rows } = flagTable([a!, b!]);
    expect(rows.map((row) => row[head.indexOf('Jack’s ring')])).toEqual(['', 'BU']);
  });
});

describe('text in a box', () => {
  it.each([
    // Two lines of 1.2 × 4 mm are 9.6 mm.
    ['as large as it may be', ['ab', 'cd'], { width: 30, height: 9.6 }, { sizeMm: 4, lines: ['ab', 'cd'] }],
    // 20 letters of half its height in 30 mm: 3 mm.
    ['shrinks to the width', ['x'.repeat(20)], { width: 30, height: 9.6 }, { sizeMm: 3, lines: ['x'.repeat(20)] }],
    // Two lines in 6 mm: 2.5 mm.
    ['shrinks to the height', ['ab', 'cd'], { width: 30, height: 6 }, { sizeMm: 2.5, lines: ['ab', 'cd'] }],
    // 25 letters at 2 mm are 25 mm, the box takes 20.
    [
      'then wraps',
      ['one two three four and six'],
      { width: 20, height: 4.8 },
      { sizeMm: 2, lines: ['one two three four', 'and six'] },
    ],
    ['then is too long for the height', ['one two three four and six'], { width: 20, height: 4.7 }, null],
    ['or a word for the width', ['x'.repeat(21)], { width: 20, height: 40 }, null],
  ])('%s', (_name, lines, box, fitted) => expect(fitText(lines, box, limits, measure)).toEqual(fitted));
});

const sheet = (set: Partial<FlagSheet>): FlagSheet => ({ ...usualFlagSheet, ...set });
const bare = { topMm: 0, rightMm: 0, bottomMm: 0, leftMm: 0, gapXMm: 0, gapYMm: 0 };

describe('the grid of a label sheet', () => {
  it.each([
    [
      'A4 in three by seven without margins',
      sheet({ ...bare, columns: 3, rows: 7 }),
      21,
      { x: 140, y: 6 * (297 / 7), width: 70, height: 297 / 7 },
    ],
    [
      'Letter, margins and gaps taken off',
      sheet({
        page: 'letter',
        topMm: 12.7,
        bottomMm: 12.7,
        leftMm: 5.95,
        rightMm: 5.95,
        gapXMm: 4,
        gapYMm: 0,
        columns: 2,
        rows: 10,
      }),
      20,
      { x: 5.95 + 100 + 4, y: 12.7 + 9 * 25.4, width: 100, height: 25.4 },
    ],
    [
      'a page of one’s own with as many strips as go on it',
      sheet({
        ...bare,
        page: 'own',
        ownWidthMm: 130,
        ownHeightMm: 40,
        style: 'strip',
        stripLengthMm: 60,
        stripHeightMm: 9,
        gapXMm: 5,
        gapYMm: 1,
      }),
      // Two of 60 and a gap of 5 in 130; four of 9 and three gaps in 40.
      8,
      { x: 65, y: 30, width: 60, height: 9 },
    ],
  ])('%s', (_name, given, count, last) => {
    const grid = labelGrid(given);
    if ('problem' in grid) throw new Error(grid.problem);
    expect(grid.labels).toHaveLength(count);
    const label = grid.labels.at(-1)!;
    for (const key of ['x', 'y', 'width', 'height'] as const) expect(label[key], key).toBeCloseTo(last[key], 9);
  });
  it.each([
    [{ leftMm: 120, rightMm: 100 }, /margins/],
    [{ columns: 60 }, /labels would be/],
    [{ rows: 100, gapYMm: 2 }, /labels would be/],
    [{ style: 'strip', stripLengthMm: 300 }, /strip of 300 × 9 mm/],
    [{ style: 'wrap', wrapMm: 45 }, /no room for text/],
  ] as [Partial<FlagSheet>, RegExp][])('%j does not go', (set, sentence) => {
    const grid = labelGrid(sheet(set));
    expect('problem' in grid && grid.problem).toMatch(sentence);
  });
});

describe('flags on sheets', () => {
  const hut = sample('hut');
  const flags = flagsOf(hut);
  it('begin at the first free label and go on to as many pages as they need', () => {
    // 34 flags from the fourth of twelve labels: 9, 12, 12, 1.
    const { pages } = layOutFlags(flags, sheet({ columns: 3, rows: 4, startAt: 4 }), measure);
    expect(pages.map((page) => page.length)).toEqual([9, 12, 12, 1]);
    expect(pages.flat().map(({ flag }) => `${flag.cable}.${flag.end}`)).toEqual(
      flags.map((f) => `${f.cable}.${f.end}`),
    );
  });
  it('no text leaves its label, on any of the three kinds', () => {
    for (const style of ['label', 'wrap', 'strip'] as const) {
      const { pages, problems } = layOutFlags(flags, sheet({ style, columns: 2, stripHeightMm: 12 }), measure);
      expect(problems, style).toEqual([]);
      for (const { label, texts, fitted, rings } of pages.flat()) {
        expect(texts).toHaveLength(style === 'wrap' ? 2 : 1);
        for (const text of texts) {
          expect(text.x).toBeGreaterThanOrEqual(label.x + (rings?.width ?? 0));
          expect(text.x + text.width).toBeLessThanOrEqual(label.x + label.width + 1e-9);
          expect(Math.max(...fitted!.lines.map((line) => measure(line, fitted!.sizeMm)))).toBeLessThanOrEqual(
            text.width + 1e-9,
          );
          expect(fitted!.lines.length * 1.2 * fitted!.sizeMm).toBeLessThanOrEqual(text.height + 1e-9);
        }
      }
    }
  });
  it('a folded label keeps its middle free, and its second half blank where that is wanted', () => {
    const wrap = sheet({
      ...bare,
      style: 'wrap',
      page: 'own',
      ownWidthMm: 100,
      ownHeightMm: 40,
      columns: 1,
      rows: 2,
      wrapMm: 20,
    });
    const [placed] = layOutFlags(flags, wrap, measure).pages.flat();
    expect(placed!.folds).toEqual([40, 60]);
    expect(placed!.texts[0]!.x + placed!.texts[0]!.width).toBeLessThan(40);
    expect(placed!.texts[1]!.x).toBeGreaterThan(60);
    const [once] = layOutFlags(flags, { ...wrap, twice: false }, measure).pages.flat();
    expect(once!.texts).toHaveLength(1);
  });
  it('say which flag is too long', () => {
    const long = {
      ...hut,
      units: hut.units.map((u) => (u.id === 'meter' ? { ...u, name: 'Instrument'.repeat(9) } : u)),
    };
    const { problems } = layOutFlags(flagsOf(long, ['r2', 'k1']), sheet({}), measure);
    expect(problems).toHaveLength(2);
    expect(problems[0]).toMatch(/^The flag of R2 at Changeover · antenna is too long for \d+\.\d × \d+\.\d mm\.$/);
  });
  it('don’t start beyond the sheet', () =>
    expect(layOutFlags(flags, sheet({ columns: 2, rows: 2, startAt: 5 }), measure).problems).toEqual([
      'A sheet has 4 labels; it can’t start at 5.',
    ]));
});
