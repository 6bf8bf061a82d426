import { describe, expect, it } from 'vitest';
import { readStation } from '../../core/station/file/read.ts';
import { writeStation } from '../../core/station/file/write.ts';
import type { Station } from '../../core/station/schema/schema.ts';
import { sample, sampleText } from '../stations/samples.ts';

/** The hut's file with one thing made wrong in it. */
function broken(change: (json: Record<string, never> & Station) => void): string {
  const json = JSON.parse(sampleText('hut'));
  change(json);
  return JSON.stringify(json);
}

const text = sampleText('hut');

interface Case {
  name: string;
  text: string;
  /** Every problem: its place and a word of its sentence. */
  problems: [place: string | RegExp, words: RegExp][];
}

const cases: Case[] = [
  { name: 'not JSON', text: '{\n  "format": oops\n}', problems: [['line 2, column 13', /not JSON.*oops/]] },
  { name: 'a list', text: '[1, 2]', problems: [['file', /one JSON object/]] },
  { name: 'another format', text: '{"format": "recipe"}', problems: [['format', /"stationwright"/]] },
  {
    name: 'a newer version',
    text: broken((s) => Object.assign(s, { version: 9 })),
    problems: [['version', /version 9.*up to version 1/]],
  },
  {
    name: 'no version',
    text: broken((s) => Object.assign(s, { version: 'x' })),
    problems: [['version', /whole number/]],
  },
  {
    name: 'an unknown kind',
    text: broken((s) => Object.assign(s.units[2] ?? {}, { kind: 'nope' })),
    problems: [['units[2].kind', /no unit kind “nope”/]],
  },
  {
    name: 'a port that isn’t there',
    text: broken((s) => Object.assign(s.cables[1]?.b ?? {}, { port: 'nope' })),
    problems: [['cables[1].b.port', /Transmitter has no port “nope”; it has power, key, antenna/]],
  },
  {
    name: 'a negative length and a duty of 7, both told',
    text: broken((s) => {
      Object.assign(s.cables[1] ?? {}, { lengthM: -3 });
      Object.assign(s.plan, { duty: 7 });
    }),
    problems: [
      ['plan.duty', /at most 1/],
      ['cables[1].lengthM', /at least 0/],
    ],
  },
  {
    name: 'two units with one id',
    text: broken((s) => Object.assign(s.units[12] ?? {}, { id: s.units[11]?.id })),
    problems: [
      ['units[12].id', /already taken by units\[11\]/],
      [/cables/, /no unit/],
    ],
  },
  {
    name: 'a cable to itself',
    text: broken((s) => Object.assign(s.cables[1] ?? {}, { b: s.cables[1]?.a })),
    problems: [['cables[1].b', /to that same port/]],
  },
  {
    name: 'NaN',
    text: text.replace('"lengthM": 0.8', '"lengthM": NaN'),
    problems: [[/^line \d+, column 18$/, /not JSON.*NaN/]],
  },
  {
    name: 'a number beyond numbers',
    text: text.replace('"lengthM": 0.8', '"lengthM": 1e999'),
    problems: [['cables[0].lengthM', /too large/]],
  },
  { name: 'a huge number', text: text.replace('10120000', '1e300'), problems: [['plan.frequencyHz', /at most/]] },
  { name: '50 MB of nesting', text: '['.repeat(50_000_000), problems: [['file', /50 MB.*at most 20 MB/]] },
  {
    name: '100,000 levels',
    text: `${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`,
    problems: [[/^line 1, column \d+$/, /more than 64 deep/]],
  },
  {
    name: 'a field that nobody knows',
    text: broken((s) => Object.assign(s.units[0] ?? {}, { colour: 'red' })),
    problems: [['units[0].colour', /“colour” is not known/]],
  },
  {
    name: 'a missing field',
    text: broken((s) => Reflect.deleteProperty(s.units[0] ?? {}, 'name')),
    problems: [['units[0].name', /missing: a text/]],
  },
  {
    name: 'a word for a number',
    text: broken((s) => Object.assign(s.cables[0] ?? {}, { lengthM: 'long' })),
    problems: [['cables[0].lengthM', /has to be a number/]],
  },
  {
    name: 'a hook-up that isn’t there',
    text: broken((s) => Object.assign(s.cables[0] ?? {}, { hookups: ['x'] })),
    problems: [['cables[0].hookups[0]', /no hook-up “x”/]],
  },
  {
    name: 'a contact that the plug has not',
    text: broken((s) => Object.assign(s.cables[0] ?? {}, { wiring: [{ a: 'plus', b: 'ring' }] })),
    problems: [['cables[0].wiring[0].b', /no contact “ring”/]],
  },
];

describe('reading a broken file', () => {
  it.each(cases)('$name', ({ text: given, problems }) => {
    const read = readStation(given);
    if (!('problems' in read)) throw new Error('it was read');
    problems.forEach(([place, words], i) => {
      const problem = read.problems[i];
      expect(problem?.place).toMatch(
        place instanceof RegExp ? place : new RegExp(`^${place.replace(/[[\].]/g, '\\$&')}$`),
      );
      expect(problem?.message).toMatch(words);
    });
    for (const { message } of read.problems) expect(message).toMatch(/^[A-Z“].*\.$/);
  });
  it('counts what it does not list', () => {
    const read = readStation(broken((s) => Object.assign(s, { units: Array.from({ length: 1000 }, () => ({})) })));
    if (!('problems' in read)) throw new Error('it was read');
    expect(read.problems.length).toBeLessThanOrEqual(201);
    expect(read.problems.at(-1)?.message).toMatch(/and \d+ more problems/);
  });
});

describe('writing', () => {
  it.each(['hut', 'hut-first-draft'])('%s read and written is the same file', (name) => {
    expect(writeStation(sample(name))).toBe(sampleText(name));
  });
  it('does not depend on the order in which keys were set', () => {
    const station = sample('hut');
    const turned = Object.fromEntries(Object.entries(station).reverse()) as Station;
    expect(writeStation(turned)).toBe(writeStation(station));
  });
});
