import { describe, expect, it } from 'vitest';
import { placeUnit } from '../../core/catalog/laying/place-unit.ts';
import { describeChange, describeDifference } from '../../core/reports/changes/describe-change.ts';
import { acceptFinding } from '../../core/rules/accept.ts';
import type { Finding } from '../../core/rules/finding.ts';
import { type Change, edit } from '../../core/station/edit.ts';
import { survey } from '../../core/survey.ts';
import { troubles } from '../cases/index.ts';
import { sample } from '../stations/samples.ts';

const hut = sample('hut');
const draft = sample('hut-first-draft');
const strip = draft.units.find((u) => u.id === 'strip')!;
const meter = hut.kinds['swr-meter'];
const note = {
  id: 'note-1',
  type: 'note',
  text: 'earth here',
  position: { x: 0, y: 0 },
  width: 90,
  height: 40,
} as const;
const noted = edit(hut, { type: 'addMarks', marks: [note] });
const accepted = { finding: 'rule:message@meter', reason: 'it is only lent', figures: '' };

interface Row {
  given: string;
  station?: typeof hut;
  change: Change;
  words: string[];
  at?: unknown[];
}

const cable = (id: string, set: Extract<Change, { type: 'updateCable' }>['set']): Change => ({
  type: 'updateCable',
  id,
  set,
});
const unit = (id: string, set: Extract<Change, { type: 'updateUnit' }>['set']): Change => ({
  type: 'updateUnit',
  id,
  set,
});
const r4 = hut.cables.find((c) => c.id === 'r4')!;

const rows: Row[] = [
  {
    given: 'a unit from the shelf, with all that its kind carries',
    change: placeUnit(hut, 'straight-key', { x: 0, y: 0 }),
    words: ['New unit Straight key'],
    at: [],
  },
  {
    given: 'a unit removed, with its cable',
    change: { type: 'removeUnits', ids: ['dummy-load'] },
    words: ['Dummy load goes', 'Cable R4 goes: Meter · antenna to Dummy load'],
    at: [{ unit: 'dummy-load' }, { cable: 'r4' }],
  },
  { given: 'a new name', change: unit('meter', { name: 'Bridge' }), words: ['Meter: name Meter → Bridge'] },
  { given: 'a move by a hair', change: unit('meter', { position: { x: 0.5, y: 1 } }), words: ['Meter: moves'] },
  {
    given: 'a move of two',
    change: {
      type: 'moveUnits',
      moves: [
        { id: 'meter', position: { x: 1, y: 2 } },
        { id: 'gone', position: { x: 1, y: 2 } },
      ],
    },
    words: ['Meter: moves'],
    at: [{ unit: 'meter' }],
  },
  {
    given: 'an own figure, from the one of the kind',
    station: draft,
    change: unit('strip', { overrides: { ...strip.overrides, 'fuse-two.fuseAmps': 2 } }),
    words: ['Fused strip · 2: fuse 10 A → 2 A'],
    at: [{ unit: 'strip' }],
  },
  { given: 'a note on a unit', change: unit('meter', { note: 'lent' }), words: ['Meter: note none → “lent”'] },
  { given: 'a unit locked', change: unit('meter', { locked: true }), words: ['Meter: its place none → locked'] },
  {
    given: 'a port on another side',
    change: unit('meter', { sides: { antenna: 'top' } }),
    words: ['Meter · antenna: side right → top'],
  },
  { given: 'another length', change: cable('r4', { lengthM: 1.5 }), words: ['R4: length 0.60 m → 1.50 m'] },
  { given: 'another number', change: cable('r4', { number: 'R40' }), words: ['R4: number R4 → R40'] },
  {
    given: 'a number locked',
    change: cable('r4', { numberLocked: true }),
    words: ['R4: its number none → locked'],
  },
  {
    given: 'another allowance for cable',
    change: { type: 'describe', set: { settings: { cableAllowance: 0.2 } } },
    words: ['Limits: cable to buy beyond what is cut none → 20 %'],
  },
  {
    given: 'another end',
    change: cable('r4', { a: { unit: 'tuner', port: 'antenna' } }),
    words: ['R4: from Meter · antenna → Tuner · antenna'],
    at: [{ cable: 'r4' }],
  },
  {
    given: 'a fuse',
    change: cable('d1', { fuse: { amps: 5, family: 'blade', atM: 0.1 } }),
    words: ['D1: fuse none → 5 A at 0.10 m'],
  },
  {
    given: 'a screen joined at one end',
    change: cable('r4', { screenAt: 'b' }),
    words: ['R4: screen none → joined at its end only'],
  },
  {
    given: 'a cable in every hook-up instead of one',
    change: cable('r4', { hookups: undefined }),
    words: ['R4: plugged in for On the dummy load → every hook-up'],
  },
  {
    given: 'wiring contact by contact',
    change: cable('k4', { wiring: [] }),
    words: ['K4: wiring straight → nothing joined'],
  },
  {
    given: 'a cable made and tested',
    change: cable('r4', { status: 'tested', note: 'blue' }),
    words: ['R4: status none → tested', 'R4: note none → “blue”'],
  },
  {
    given: 'a new cable',
    change: { type: 'addCables', cables: [{ ...r4, id: 'r9', number: 'R9' }] },
    words: ['New cable R9, RG-58, 0.60 m, from Meter · antenna to Dummy load, for On the dummy load'],
    at: [r4.a, r4.b],
  },
  {
    given: 'a cable removed',
    change: { type: 'removeCables', ids: ['r4'] },
    words: ['Cable R4 goes: Meter · antenna to Dummy load'],
  },
  {
    given: 'a hook-up',
    change: { type: 'addHookup', hookup: { id: 'field', name: 'In the field' } },
    words: ['New hook-up “In the field”'],
  },
  {
    given: 'a hook-up renamed',
    change: { type: 'updateHookup', id: 'air', set: { name: 'Up' } },
    words: ['Hook-up “On the air” → “Up”'],
  },
  {
    given: 'a hook-up removed with what is in it alone',
    change: { type: 'removeHookup', id: 'dummy' },
    words: ['Cable R4 goes: Meter · antenna to Dummy load', 'Hook-up “On the dummy load” goes'],
  },
  { given: 'a note on the paper', change: { type: 'addMarks', marks: [note] }, words: ['New note “earth here”'] },
  {
    given: 'a note moved and rewritten',
    station: noted,
    change: { type: 'updateMark', id: 'note-1', set: { text: 'there', position: { x: 9, y: 0 } } },
    words: ['Note “earth here”: text “earth here” → “there”', 'Note “earth here”: moves'],
  },
  {
    given: 'a note removed',
    station: noted,
    change: { type: 'removeMarks', ids: ['note-1'] },
    words: ['Note “earth here” goes'],
  },
  {
    given: 'a kind described anew',
    change: { type: 'setKind', id: 'swr-meter', kind: { ...meter!, summary: 'mine' }, connectors: {} },
    words: [`The unit kind “${meter!.name}” is described anew`],
    at: [{ unit: 'meter' }],
  },
  {
    given: 'a kind that no unit is of',
    change: { type: 'setKind', id: 'own', kind: { ...meter!, name: 'My meter' }, connectors: {} },
    words: ['New unit kind “My meter”'],
  },
  {
    given: 'another plan',
    change: { type: 'setPlan', set: { speedWpm: 20, frequencyHz: 7_030_000 } },
    words: ['Plan: frequency 10.120 MHz → 7.030 MHz', 'Plan: speed 15 WPM → 20 WPM'],
  },
  {
    given: 'a title and a limit',
    change: { type: 'describe', set: { title: 'Attic', settings: { maxDrop: 0.03 } } },
    words: ['Station: title “Hut, 30 m” → “Attic”', 'Limits: voltage drop up to none → 3 %'],
  },
  {
    given: 'a finding accepted',
    change: { type: 'accept', acceptance: accepted },
    words: ['Accepted: “it is only lent”'],
  },
  {
    given: 'a reading',
    change: {
      type: 'addReading',
      reading: { step: 'supply/supply.output/volts', value: 13.7, unit: 'V', when: '2026-03-01' },
    },
    words: ['The readings change'],
  },
  {
    given: 'a reading struck out',
    station: edit(hut, {
      type: 'addReading',
      reading: { step: 'supply/supply.output/volts', value: 13.7, unit: 'V', when: '2026-03-01' },
    }),
    change: { type: 'removeReading', step: 'supply/supply.output/volts', when: '2026-03-01' },
    words: ['The readings change'],
  },
  {
    given: 'it taken back',
    station: { ...hut, accepted: [accepted] },
    change: { type: 'takeBack', finding: accepted.finding },
    words: ['No longer accepted: “it is only lent”'],
  },
  {
    given: 'several at once',
    change: {
      type: 'all',
      name: 'Both',
      changes: [cable('r4', { lengthM: 1 }), unit('meter', { name: 'Bridge' })],
    },
    words: ['Meter: name Meter → Bridge', 'R4: length 0.60 m → 1.00 m'],
  },
];

describe('what a change does, in words', () => {
  it.each(rows)('$given', ({ station = hut, change, words, at }) => {
    const lines = describeChange(station, change);
    expect(lines.map((line) => line.words)).toEqual(words);
    if (at) expect(lines.flatMap((line) => line.at)).toEqual(at);
  });

  it('has a row for every type of change', () => {
    const every: Record<Change['type'], true> = {
      addUnits: true,
      updateUnit: true,
      moveUnits: true,
      removeUnits: true,
      addCables: true,
      updateCable: true,
      removeCables: true,
      addHookup: true,
      updateHookup: true,
      removeHookup: true,
      addMarks: true,
      updateMark: true,
      removeMarks: true,
      setKind: true,
      setPlan: true,
      describe: true,
      accept: true,
      takeBack: true,
      addReading: true,
      removeReading: true,
      all: true,
    };
    expect([...new Set(rows.map((r) => r.change.type))].sort()).toEqual(Object.keys(every).sort());
  });

  it.each<[string, Change]>([
    ['what is not there', unit('gone', { name: 'x' })],
    ['what is so already', unit('meter', { name: 'Meter' })],
    ['nothing', { type: 'all', name: 'Nothing', changes: [] }],
  ])('says nothing of %s', (_, change) => expect(describeChange(hut, change)).toEqual([]));

  it('swaps and swaps back', () => {
    const fix = survey(draft).findings.find((f) => f.fix?.name === 'Swap the two cores of D4')?.fix;
    const there = edit(draft, fix!.change);
    const back = { wiring: draft.cables.find((c) => c.id === 'd4')?.wiring };
    expect(describeChange(draft, fix!.change).map((l) => l.words)).toEqual(['D4: wiring straight → swapped']);
    expect(describeChange(there, cable('d4', back)).map((l) => l.words)).toEqual(['D4: wiring swapped → straight']);
  });
});

describe('every fix that is offered', () => {
  const stations = [draft, hut, ...troubles.map((t) => t.wrong)];
  const fixes = stations.flatMap((station) =>
    survey(station).findings.flatMap((finding) => (finding.fix ? [{ station, finding, fix: finding.fix }] : [])),
  );
  const ids = (station: typeof hut) => new Set([...station.units, ...station.cables].map((item) => item.id));

  it('says what it does, at places that are on the drawing', () => {
    expect(fixes.length).toBeGreaterThan(30);
    for (const { station, fix } of fixes) {
      const lines = describeChange(station, fix.change);
      expect(lines.length, fix.name).toBeGreaterThan(0);
      const there = ids(station);
      for (const { words, at } of lines) {
        expect(words).not.toMatch(/undefined|NaN|\[object/);
        for (const place of at) expect(there).toContain('unit' in place ? place.unit : place.cable);
      }
      expect(
        lines.some((line) => line.at.length > 0),
        fix.name,
      ).toBe(true);
    }
  });

  it('accepting a finding says so too', () => {
    for (const { station, finding } of fixes.slice(0, 5) as { station: typeof hut; finding: Finding }[])
      expect(describeChange(station, acceptFinding(finding, 'as it is')).map((l) => l.words)).toEqual([
        'Accepted: “as it is”',
      ]);
  });
});

it('tells what makes one station another, in the same words', () => {
  const { name } = strip;
  const other = edit(draft, {
    type: 'all',
    name: '',
    changes: [unit('strip', { name: 'Strip' }), { type: 'addMarks', marks: [note] }],
  });
  expect(describeDifference(draft, other).map((line) => line.words)).toEqual([
    `${name}: name ${name} → Strip`,
    'New note “earth here”',
  ]);
  expect(describeDifference(other, draft).map((line) => line.words)).toEqual([
    `Strip: name Strip → ${name}`,
    'Note “earth here” goes',
  ]);
  expect(describeDifference(draft, structuredClone(draft))).toEqual([]);
});
