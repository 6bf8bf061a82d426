import type { Station } from '../../core/station/schema/schema.ts';
import { correct, troubles } from '../cases/index.ts';
import { sample, sampleNames } from '../stations/samples.ts';

/** Stations that are right, by name. */
export function* rightStations(): Generator<[name: string, station: Station]> {
  for (const name of sampleNames)
    if (!['club-hall', 'hut-first-draft', 'hut-amplifier', 'old-and-new'].includes(name)) yield [name, sample(name)];
  for (const { id, right } of troubles) yield [id, right];
  for (const { id, station } of correct) yield [id, station];
}
