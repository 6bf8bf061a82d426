import { isObject, type Json, type JsonObject, put, type Spot, spotsOf, take, valueAt } from '../json.ts';
import type { Random } from '../random.ts';
import type { Mangling } from './mangling.ts';

const anywhere = (document: JsonObject, random: Random): Spot | undefined => random.pick(spotsOf(document));

const otherTypes: readonly [Json, ...Json[]] = [
  ...([null, true, false, 0, -1, 1, 1e21, 0.1, '', ' ', '0', 'x', '12 V', [], {}, [[]], [null], { id: 'x' }] as const),
] as unknown as [Json, ...Json[]];

/** A value like another one, under a name that nothing has yet where it is one of an object. */
function double({ holder, key }: Spot, value: Json) {
  const copy = structuredClone(value);
  if (Array.isArray(holder)) holder.splice(Number(key), 0, copy);
  else put({ holder, key: `${key}-2` }, copy);
}

/** What is left when parts of a document are lost, doubled or swapped. */
export const structure: readonly Mangling[] = [
  {
    name: 'something is missing',
    inDocument: (document, random) => {
      const spot = anywhere(document, random);
      if (spot) take(spot);
    },
  },
  {
    name: 'a head entry is missing',
    inDocument: (document, random) => {
      const key = random.pick(Object.keys(document));
      if (key !== undefined) delete document[key];
    },
  },
  {
    name: 'something is there twice',
    inDocument: (document, random) => {
      const spot = random.pick(spotsOf(document).filter((s) => Array.isArray(s.holder) || isObject(valueAt(s))));
      const value = spot && valueAt(spot);
      if (spot && value !== undefined) double(spot, value);
    },
  },
  {
    name: 'something is somewhere else',
    inDocument: (document, random) => {
      const [from, to] = [anywhere(document, random), anywhere(document, random)];
      const moved = from && structuredClone(valueAt(from));
      if (!from || !to || moved === undefined) return;
      take(from);
      put(to, moved);
    },
  },
  {
    name: 'two values of one sort are swapped',
    inDocument: (document, random) => {
      const one = anywhere(document, random);
      const alike = spotsOf(document).filter((s) => s.key === one?.key && typeof s.key === 'string');
      const other = random.pick(alike);
      if (!one || !other) return;
      const [a, b] = [structuredClone(valueAt(one)), structuredClone(valueAt(other))];
      if (a !== undefined && b !== undefined) {
        put(one, b);
        put(other, a);
      }
    },
  },
  {
    name: 'a list is empty',
    inDocument: (document, random) => {
      const spot = random.pick(spotsOf(document).filter((s) => typeof valueAt(s) === 'object'));
      if (spot) put(spot, Array.isArray(valueAt(spot)) ? [] : {});
    },
  },
  {
    name: 'a list is in another order',
    inDocument: (document, random) => {
      const list = random.pick(spotsOf(document).map(valueAt).filter(Array.isArray));
      list?.reverse();
    },
  },
  {
    name: 'something of another type',
    inDocument: (document, random) => {
      const spot = anywhere(document, random);
      if (spot) put(spot, structuredClone(random.one(otherTypes)));
    },
  },
  {
    name: 'something in a list of its own',
    inDocument: (document, random) => {
      const spot = anywhere(document, random);
      const value = spot && valueAt(spot);
      if (spot && value !== undefined) put(spot, [structuredClone(value)]);
    },
  },
  {
    name: 'something nobody knows',
    inDocument: (document, random) => {
      const holder = random.pick([document, ...spotsOf(document).map(valueAt).filter(isObject)]);
      if (holder) put({ holder, key: random.one(['colour', '__proto__', 'constructor', 'toString', '']) }, 'blue');
    },
  },
];
