import type { Station } from '../schema/schema.ts';

/** Keys in the order in which a reader looks for them; others follow by the alphabet. */
const order = [
  'format',
  'version',
  'title',
  'notes',
  'plan',
  'units',
  'cables',
  'couplings',
  'hookups',
  'marks',
  'accepted',
  'readings',
  'settings',
  'kinds',
  'cableKinds',
  'connectors',
  'id',
  'number',
  'type',
  'kind',
  'name',
  'label',
  'class',
  'family',
  'group',
  'summary',
  'unit',
  'port',
  'x',
  'y',
];
const rank = new Map(order.map((key, i) => [key, i]));
const rankOf = (key: string) => rank.get(key) ?? order.length;

/** The text of a station file: two-space indent, stable key order, a newline at the end. */
export const writeStation = (station: Station): string => writeSorted(station);

/** A value as the text of a file, in the same way. */
export const writeSorted = (value: object): string => `${JSON.stringify(sorted(value), null, 2)}\n`;

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const keys = Object.keys(value);
  // What was read from a file stands in order, mostly.
  if (!keys.every((key, i) => i === 0 || compareKeys(keys[i - 1] as string, key) < 0)) keys.sort(compareKeys);
  const entries: [string, unknown][] = [];
  for (const key of keys) {
    const field = (value as Record<string, unknown>)[key];
    if (field !== undefined) entries.push([key, sorted(field)]);
  }
  return Object.fromEntries(entries);
}

const compareKeys = (a: string, b: string): number => rankOf(a) - rankOf(b) || (a < b ? -1 : 1);
