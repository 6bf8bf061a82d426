import { boundsOf, type Field, fieldsOf } from '../fields.ts';
import { type JsonObject, put, take } from '../json.ts';
import type { Random } from '../random.ts';
import type { Mangling } from './mangling.ts';

const numbersOf = (document: JsonObject): Field[] => fieldsOf(document).filter((field) => boundsOf(field) !== null);

/** A figure that the schema allows and nobody would expect. */
export function extreme(field: Field, random: Random): number {
  const bounds = boundsOf(field) ?? { least: 0, most: 0, whole: false };
  const { least, most, whole } = bounds;
  const tiny = [1e-12, 1e-300, 5e-324].map((n) => (whole ? 1 : n));
  const middle = least + (most - least) * random.share();
  const all = [least, most, 0, 1, -1, ...tiny, least + (whole ? 1 : 1e-9), most * (whole ? 1 : 1 - 1e-12), middle];
  const legal = all.map((n) => (whole ? Math.round(n) : n)).filter((n) => n >= least && n <= most);
  return random.pick(legal) ?? least;
}

const extremely = (fields: readonly Field[], random: Random) => {
  for (const field of fields) put(field, extreme(field, random));
};

/** Figures at the edge of what a file may hold, and beyond. */
export const figures: readonly Mangling[] = [
  {
    name: 'an extreme figure',
    inDocument: (document, random) => {
      const field = random.pick(numbersOf(document).filter((f) => f.value !== undefined));
      if (field) extremely([field], random);
    },
  },
  {
    name: 'several extreme figures',
    inDocument: (document, random) => {
      const there = numbersOf(document).filter((f) => f.value !== undefined);
      extremely(
        Array.from({ length: 2 + random.below(12) }, () => random.pick(there)).flatMap((f) => f ?? []),
        random,
      );
    },
  },
  {
    name: 'every figure of one name extreme',
    inDocument: (document, random) => {
      const there = numbersOf(document).filter((f) => f.value !== undefined);
      const key = random.pick(there)?.key;
      const alike = there.filter((f) => f.key === key);
      const [first] = alike;
      if (first && random.chance(0.5)) for (const field of alike) put(field, extreme(first, random));
      else extremely(alike, random);
    },
  },
  {
    name: 'all figures of one thing extreme',
    inDocument: (document, random) => {
      const there = numbersOf(document).filter((f) => f.value !== undefined);
      const holder = random.pick(there)?.holder;
      extremely(
        there.filter((f) => f.holder === holder),
        random,
      );
    },
  },
  {
    name: 'a figure that is usually left out',
    inDocument: (document, random) => {
      const left = numbersOf(document).filter((f) => f.value === undefined);
      extremely(
        Array.from({ length: 1 + random.below(4) }, () => random.pick(left)).flatMap((f) => f ?? []),
        random,
      );
    },
  },
  {
    name: 'a figure beyond its bounds',
    inDocument: (document, random) => {
      const field = random.pick(numbersOf(document));
      const { least = 0, most = 0 } = (field && boundsOf(field)) ?? {};
      if (field) put(field, random.one([least - 1, most + 1, most * 10, -most, 1.5, 1e300]));
    },
  },
  {
    name: 'another of the choices',
    inDocument: (document, random) => {
      const fields = fieldsOf(document).filter(({ schema }) => Array.isArray(schema.enum) || schema.type === 'boolean');
      for (let n = random.below(4); n >= 0; n--) {
        const field = random.pick(fields);
        const choices = Array.isArray(field?.schema.enum) ? field.schema.enum : [true, false];
        const choice = random.pick(choices);
        if (field && choice !== undefined) put(field, choice);
      }
    },
  },
  {
    name: 'what may be left out is left out',
    inDocument: (document, random) => {
      const optional = fieldsOf(document).filter(({ holder, value }) => value !== undefined && !Array.isArray(holder));
      const key = random.pick(optional)?.key;
      const share = random.one([1, 0.5, 0.1]);
      for (const field of optional) if (field.key === key && random.chance(share)) take(field);
    },
  },
];
