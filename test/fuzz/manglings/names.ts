import { type Json, type JsonObject, put, type Spot, spotsOf, valueAt } from '../json.ts';
import type { Random } from '../random.ts';
import type { Mangling } from './mangling.ts';

/** Names that every object has already; the last is one that JSON may hold and an id may not be. */
const inherited = ['constructor', 'toString', 'hasOwnProperty', 'valueOf', 'isPrototypeOf', '__proto__'] as const;

const shown = new Set([
  'name',
  'label',
  'title',
  'notes',
  'note',
  'number',
  'text',
  'summary',
  'source',
  'reason',
  'standard',
]);

const isWord = (value: Json | undefined): boolean => typeof value === 'string' && /^[\w.-]+$/.test(value);

const isShown = (spot: Spot): boolean => shown.has(String(spot.key)) && typeof valueAt(spot) === 'string';

/** What people and their clipboards put into names. */
const odd = [
  '',
  ' ',
  '\t',
  'two\nlines',
  '\u0000',
  '\u001b[2J\u001b[1;31mred',
  '\u0007\u0008\u009b',
  '\ud800',
  'x\udfffx',
  '\u202eevil',
  '\ufeffmark',
  '\u2028\u2029',
  ']]><script>alert(1)</script>&amp;&bogus;',
  '"\'`\\',
  '=1+1',
  '@SUM(A1)',
  '-2+3|cmd',
  'a;b,c\td',
  '{volts V} {name}',
  '$& $1 $$',
  '%s %d %n',
  'Supply 12345678901234567890',
  'Supply 99999999999999999',
  'Übergrößenträger 🛰️ 電源',
  '../../../etc/passwd',
  'con',
] as const;

const inNames =
  (write: (name: string, random: Random) => string, share: number) => (document: JsonObject, random: Random) => {
    const spots = spotsOf(document).filter(isShown);
    const chosen = share === 0 ? [random.pick(spots)] : spots.filter(() => random.chance(share));
    for (const spot of chosen) if (spot) put(spot, write(String(valueAt(spot)), random));
  };

/** An id and all that names it under another name: the document means the same. */
const rename =
  (to: (random: Random) => string) =>
  (bytes: Buffer, random: Random): Buffer => {
    const text = bytes.toString('utf8');
    const ids = [...text.matchAll(/"(?:id|kind|connector|unit|port)": "([\w.-]+)"/g)].map((m) => m[1] ?? '');
    const [from, next] = [random.pick(ids), to(random)];
    const whole = from === undefined ? text : text.replaceAll(`"${from}"`, `"${next}"`);
    return Buffer.from(whole.replaceAll(`"${from}.`, `"${next}.`).replaceAll(`.${from}"`, `.${next}"`), 'utf8');
  };

/** Names and ids: those of every object, huge ones, and those that do something to what shows them. */
export const names: readonly Mangling[] = [
  {
    name: 'an id that every object has, everywhere',
    inBytes: rename((random) => random.one(inherited)),
  },
  {
    name: 'an id that every object has, in one place',
    inDocument: (document, random) => {
      const spot = random.pick(spotsOf(document).filter((s) => isWord(valueAt(s))));
      if (spot) put(spot, random.one(inherited));
    },
  },
  {
    name: 'a key that every object has',
    inDocument: (document, random) => {
      const spot = random.pick(spotsOf(document).filter((s) => typeof s.key === 'string'));
      const value = spot && valueAt(spot);
      if (spot && value !== undefined) put({ holder: spot.holder, key: random.one(inherited) }, structuredClone(value));
    },
  },
  { name: 'an odd name', inDocument: inNames((_, random) => random.one(odd), 0) },
  { name: 'odd names', inDocument: inNames((name, random) => name + random.one(odd), 0.1) },
  {
    name: 'a huge name',
    inDocument: inNames(
      (name, random) => `${name} `.repeat(5000).slice(0, random.one([200, 1000, 19_999, 20_000, 20_001])),
      0,
    ),
  },
  { name: 'every name the same', inDocument: inNames(() => 'Box', 1) },
  {
    name: 'a long id, everywhere',
    inBytes: rename((random) => 'x'.repeat(random.one([79, 80, 81, 5000]))),
  },
];
