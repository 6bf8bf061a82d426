import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { JsonObject } from './json.ts';
import { manglings } from './manglings/index.ts';
import type { Mangling } from './manglings/mangling.ts';
import { type Random, randomFrom } from './random.ts';

/** A sample spoilt; its number says all about it. */
export interface MangledStation {
  readonly number: number;
  readonly sample: string;
  /** What was done to it, by subject and name, in the order in which it was done. */
  readonly manglings: readonly { readonly subject: string; readonly name: string }[];
  readonly bytes: Buffer;
}

const folder = path.join(import.meta.dirname, '../../core/samples');
const ending = '.station.json';
const samples = readdirSync(folder)
  .filter((file) => file.endsWith(ending))
  .toSorted();

/** The hall takes as long as ten others, so it comes less often. */
const largest = `club-hall${ending}`;
const smaller = samples.filter((file) => file !== largest);

/** The document of a number: the same every time. */
export function mangledStation(number: number): MangledStation {
  const random = randomFrom(number);
  const file = random.chance(0.02) ? largest : (random.pick(smaller) ?? largest);
  const chosen = chooseManglings(random);
  const document = JSON.parse(readFileSync(path.join(folder, file), 'utf8')) as JsonObject;
  return {
    number,
    sample: file.slice(0, -ending.length),
    manglings: chosen.map(({ subject, mangling }) => ({ subject, name: mangling.name })),
    bytes: spoil(
      document,
      chosen.map(({ mangling }) => mangling),
      random,
    ),
  };
}

/** The bytes of a document to which all of this was done; what is done to bytes comes last. */
export function spoil(document: JsonObject, done: readonly Mangling[], random: Random): Buffer {
  for (const mangling of done) if ('inDocument' in mangling) mangling.inDocument(document, random);
  let bytes: Buffer = Buffer.from(`${JSON.stringify(document, null, 2)}\n`, 'utf8');
  for (const mangling of done) if ('inBytes' in mangling) bytes = mangling.inBytes(bytes, random);
  return bytes;
}

interface Chosen {
  readonly subject: string;
  readonly mangling: Mangling;
}

/** One, mostly; several at once now and then. */
function chooseManglings(random: Random): Chosen[] {
  const several = random.chance(0.25) ? 2 + random.below(5) : 1;
  const subjects = Object.entries(manglings);
  const chosen = Array.from({ length: several }, () => {
    const [subject, list] = random.pick(subjects) ?? ['', []];
    return list.length === 0 ? [] : [{ subject, mangling: random.one(list as [Mangling, ...Mangling[]]) }];
  }).flat();
  return chosen.toSorted((a, b) => Number('inBytes' in a.mangling) - Number('inBytes' in b.mangling));
}
