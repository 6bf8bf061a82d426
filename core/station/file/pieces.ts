import type { z } from 'zod';
import { createStation } from '../create-station.ts';
import { type Station, stationSchema } from '../schema/schema.ts';

export type ListName = 'units' | 'cables' | 'couplings' | 'hookups' | 'marks' | 'accepted' | 'readings';
type RecordName = 'kinds' | 'cableKinds' | 'connectors';
type Json = Readonly<Record<string, unknown>>;

/** What of a document can be looked at: all of it, or what is left beside the parts that could not be read. */
export interface Pieces {
  readonly station: Station;
  /** Where in the file an item of a list stands. */
  readonly indexOf: (list: ListName, i: number) => number;
  /** Whether the file has something of this id, be it one that could not be read. */
  readonly has: (list: 'units' | 'hookups' | RecordName, id: string) => boolean;
}

/** A document of which everything could be read. */
export const wholeOf = (station: Station): Pieces => ({ station, indexOf: (_, i) => i, has: namesOf(station) });

/** What is left of a document without the items and entries in which the schema found something wrong. */
export function readableOf(document: Json, error: z.ZodError): Pieces {
  const wrong = new Set(error.issues.map(({ path }) => path.slice(0, 2).map(String).join('/')));
  const kept = new Map<string, number[]>();
  const left: Record<string, unknown> = createStation('');
  for (const name of Object.keys(stationSchema.shape)) {
    const value = document[name];
    if (wrong.has(name) || value === undefined) continue;
    const isWrong = (key: PropertyKey) => wrong.has(`${name}/${String(key)}`);
    if (Array.isArray(value)) {
      const indices = value.map((_, i) => i).filter((i) => !isWrong(i));
      kept.set(name, indices);
      left[name] = indices.map((i) => value[i]);
    } else if (typeof value === 'object' && value !== null && isRecord(name))
      left[name] = Object.fromEntries(Object.entries(value).filter(([key]) => !isWrong(key)));
    else if (![...wrong].some((path) => path.startsWith(`${name}/`))) left[name] = value;
  }
  const parsed = stationSchema.safeParse(left);
  const station = parsed.success ? parsed.data : createStation('');
  return { station, indexOf: (list, i) => kept.get(list)?.[i] ?? i, has: namesOf(document) };
}

const isRecord = (name: string): name is RecordName => ['kinds', 'cableKinds', 'connectors'].includes(name);

/** A list that is not there or is none could hold anything: nothing is said of what it lacks. */
function namesOf(document: object): Pieces['has'] {
  const ids = new Map<string, ReadonlySet<unknown> | null>();
  const idsIn = (name: string): ReadonlySet<unknown> | null => {
    const value: unknown = (document as Json)[name];
    if (Array.isArray(value)) return new Set(value.map((item: { id?: unknown } | null) => item?.id));
    return isRecord(name) && typeof value === 'object' && value !== null ? new Set(Object.keys(value)) : null;
  };
  return (name, id) => {
    if (!ids.has(name)) ids.set(name, idsIn(name));
    return ids.get(name)?.has(id) ?? true;
  };
}
