import { type Station, stationSchema } from '../schema/schema.ts';
import { checkSize } from './check-size.ts';
import type { Problem } from './problem.ts';
import { readJson } from './read-json.ts';
import { findBrokenReferences } from './references.ts';
import { problemsOfSchema, shorten } from './schema-problems.ts';
import { bringUpToDate, stationFormat } from './versions.ts';

/** A station, or every problem that keeps the text from being one. */
export type ReadResult = { station: Station } | { problems: Problem[] };

/**
 * Reads the text of a station file. Every problem is reported, each with its place: `line 3, column 9` where the
 * text isn't JSON, `cables[4].lengthM` where a value doesn't fit. Nothing is thrown, however broken the text is.
 */
export function readStation(text: string): ReadResult {
  const json = readJson(text, 'a station file');
  if ('problems' in json) return json;
  const dated = bringUpToDate(json.value, stationFormat);
  if ('problem' in dated) return { problems: [dated.problem] };
  const parsed = stationSchema.safeParse(dated.document);
  if (!parsed.success) return { problems: shorten(problemsOfSchema(parsed.error, dated.document)) };
  const problems = [...checkSize(parsed.data), ...findBrokenReferences(parsed.data)];
  return problems.length > 0 ? { problems: shorten(problems) } : { station: parsed.data };
}
