import type { Station } from '../../core/station/schema/schema.ts';
import { correct, troubles } from '../cases/index.ts';
import { sample, sampleNames } from '../stations/samples.ts';
import { drawAtRandom } from './draw-at-random.ts';

/** A station whose mix-ups are drawn, and how many of them: every so manyth. */
export interface Looked {
  readonly name: string;
  readonly station: Station;
  readonly every: number;
}

/** A large station has thousands of mix-ups, each of them seconds of search. */
const everyOf: Readonly<Record<string, number>> = { 'club-hall': 40 };

/** What the cases call right, a hundred stations drawn at random, and the samples, the largest last. */
export function* allStations(): Generator<Looked> {
  for (const { id, right } of troubles) yield { name: `${id} put right`, station: right, every: 1 };
  for (const { id, station } of correct) yield { name: id, station, every: 1 };
  let number = 0;
  for (const station of drawAtRandom(100)) yield { name: `drawn at random, ${++number}`, station, every: 1 };
  const names = [...sampleNames].sort((a, b) => (everyOf[a] ?? 1) - (everyOf[b] ?? 1));
  for (const name of names) yield { name, station: sample(name), every: everyOf[name] ?? 1 };
}
