import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readStation } from '../../core/station/file/read-station.ts';
import { writeStation } from '../../core/station/file/write-station.ts';
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
    name: 'a fuse of no amperes, of which nothing could be a share',
    text: broken((s) => Object.assign(s.cables[1] ?? {}, { fuse: { amps: 0, family: 'blade', atM: 0 } })),
    problems: [['cables[1].fuse.amps', /at least 0\.001/]],
  },
  {
    name: 'an order to a terminal behind more than 20,000 halves of characters',
    text: broken((s) => Object.assign(s.units[0] ?? {}, { name: `${'🛰'.repeat(15_000)}\u001b[2J` })),
    problems: [['units[0].name', /too long/]],
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
    name: 'one thing of every kind wrong, all of it told',
    text: broken((s) => {
      Object.assign(s, { title: 'a\u0007' });
      Object.assign(s.units[0] ?? {}, { overrides: { 'output.volts': 1e9 } });
      Object.assign(s.cables[1] ?? {}, { lengthM: -3, colour: 'red' });
      Object.assign(s.cables[2]?.b ?? {}, { port: 'nope' });
      Object.assign(s.kinds.keyer ?? {}, { ports: [] });
      Object.assign(s.kinds.paddle ?? {}, { source: '' });
    }),
    problems: [
      ['title', /U\+0007/],
      ['cables[1].lengthM', /at least 0\. Metres are 0 to 10,000\./],
      ['cables[1].colour', /not known/],
      ['kinds.keyer.ports', /must not be empty/],
      ['kinds.paddle.source', /where its figures are from/],
      ['units[0].overrides["output.volts"]', /Volts are −100,000 to 100,000\./],
      ['cables[2].b.port', /no port “nope”/],
    ],
  },
  {
    name: 'a connector that can’t be read, told once and not at every contact of it',
    text: broken((s) => Object.assign(s.connectors['mono-35-jack'] ?? {}, { contacts: 5 })),
    problems: [['connectors["mono-35-jack"].contacts', /a list/]],
  },
  {
    name: 'an actor that feels a port that isn’t there, as the kind editor says it',
    text: broken((s) =>
      Object.assign(s.kinds.paddle?.actors?.[0] ?? {}, { feels: { type: 'rfAbove', port: 'x', dbm: 1 } }),
    ),
    problems: [['kinds.paddle.actors[0].feels.port', /no port “x”/]],
  },
  {
    name: 'a name that the language has',
    text: broken((s) => {
      Object.assign(s.units[0] ?? {}, { settings: { toString: 'a' } });
      Object.assign(s.cables[0] ?? {}, { kind: 'valueOf', plugs: { a: 'hasOwnProperty' } });
      Object.assign(Object.values(s.connectors)[0] ?? {}, { family: 'constructor' });
    }),
    problems: [
      ['units[0].settings.toString', /“toString” can’t be an id/],
      ['cables[0].kind', /“valueOf” can’t be an id/],
      ['cables[0].plugs.a', /“hasOwnProperty”/],
      [/^connectors.*\.family$/, /“constructor”/],
    ],
  },
  {
    name: 'the prototype as a key, wherever it is',
    text: text
      .replace('"kinds": {', '"kinds": { "__proto__": { "ports": [] },')
      .replace('"plan": {', '"plan": { "__proto__": 1,'),
    problems: [
      ['plan.__proto__', /“__proto__” can’t be a name/],
      ['kinds.__proto__', /“__proto__” can’t be a name/],
    ],
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
    expect(read.problems.at(-1)?.message).toMatch(/^There are \d+ more problems/);
  });
});

describe('reading', () => {
  it('passes over the mark of an encoding', () => {
    expect(readStation(`\uFEFF${text}`)).toEqual(readStation(text));
  });
  it.each(['hut', 'hut-first-draft', 'hut-amplifier', 'club-hall', 'hill-table', 'two-metre-mast', 'old-and-new'])(
    'has no remark on %s',
    (name) => {
      expect(readStation(sampleText(name))).toMatchObject({ remarks: [] });
    },
  );
  it('takes what is typed with either sign as it is meant, in a kind and as an own figure', () => {
    const read = readStation(
      broken((s) => {
        const path = s.kinds['changeover-by-line']?.elements.find((e) => e.type === 'rfPath' && e.isolationDb);
        Object.assign(path ?? {}, { isolationDb: -30 });
        const unit = s.units.find((u) => u.kind === 'changeover-by-line');
        Object.assign(unit ?? {}, { overrides: { [`${path?.id}.isolationDb`]: -35 } });
      }),
    );
    if (!('station' in read)) throw new Error(read.problems[0]?.message);
    const saved = writeStation(read.station);
    expect(saved).toMatch(/"isolationDb": 30,/);
    expect(saved).toMatch(/\.isolationDb": 35/);
    expect(saved).not.toMatch(/isolationDb": -/);
  });
  it('remarks what names nothing, and reads on', () => {
    const read = readStation(
      broken((s) => {
        Object.assign(s.units[0] ?? {}, {
          overrides: { 'output.vlots': 3 },
          sides: { nope: 'left' },
          settings: { a: 'b' },
        });
        Object.assign(s.hookups[0] ?? {}, { settings: { nobody: { a: 'b' } } });
        const accept = (finding: string) => ({ finding, reason: 'so', figures: '' });
        const places = ['nobody', 'supply.output', 'supply.nope', 'cable zz.a', `cable ${s.cables[0]?.id}`];
        Object.assign(s, { accepted: places.map((place) => accept(`power/x:y@${place}`)) });
      }),
    );
    if (!('station' in read)) throw new Error(read.problems[0]?.message);
    expect(read.remarks.map((r) => r.place)).toEqual([
      'units[0].overrides["output.vlots"]',
      'units[0].sides.nope',
      'units[0].settings.a',
      'hookups[0].settings.nobody',
      'accepted[0].finding',
      'accepted[2].finding',
      'accepted[3].finding',
    ]);
    expect(read.remarks[0]?.message).toMatch(/^Bench supply has no figure “output\.vlots”/);
  });
});

const attacks: [name: string, places: string[]][] = [
  ['amplifier-loop', []],
  ['feel', ['kinds["receiver-with-mute"].actors[0].feels.contact']],
  ['nan1', ['units[3].overrides["send.lossDb"]']],
  ['nan2', ['units[12].overrides["wire.ohms"]']],
  ['neg', ['units[1].overrides["minus-two.ohms"]']],
  ['proto', ['units[2].kind']],
  ['twin', ['kinds.paddle.actors[1].id']],
];

describe('reading the stations that broke the tool', () => {
  it.each(attacks)('%s', (name, places) => {
    const file = path.join(import.meta.dirname, 'attack', `${name}.station.json`);
    const read = readStation(readFileSync(file, 'utf8'));
    expect('problems' in read ? read.problems.map((p) => p.place) : []).toEqual(places);
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
