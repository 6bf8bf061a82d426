import { withMeantFigures } from '../own-figure.ts';
import { type Station, stationSchema } from '../schema/schema.ts';
import { checkSize } from './check/check-size.ts';
import { findBrokenReferences } from './check/find-broken-references.ts';
import { remarksOn } from './check/remarks-on.ts';
import { takeOutForbiddenKeys } from './check/take-out-forbidden-keys.ts';
import { readableOf, wholeOf } from './pieces.ts';
import type { Problem } from './problem.ts';
import { readJson } from './read-json.ts';
import { problemsOfSchema, shorten } from './schema-problems.ts';
import { bringUpToDate, stationFormat } from './versions.ts';

/** A station and what in its file has no effect, or every problem that keeps the text from being one. */
export type ReadResult = { station: Station; remarks: Problem[] } | { problems: Problem[] };

/**
 * Reads the text of a station file. Every problem is reported, each with its place: `line 3, column 9` where the
 * text isn't JSON, `cables[4].lengthM` where a value doesn't fit. Nothing is thrown, however broken the text is.
 */
export function readStation(text: string): ReadResult {
  const json = readJson(text, 'a station file');
  if ('problems' in json) return json;
  const dated = bringUpToDate(json.value, stationFormat);
  if ('problem' in dated) return { problems: [dated.problem] };
  const { document } = dated;
  const forbidden = takeOutForbiddenKeys(document);
  const parsed = stationSchema.safeParse(document);
  const wrong = parsed.success ? [] : problemsOfSchema(parsed.error, document);
  const pieces = parsed.success ? wholeOf(parsed.data) : readableOf(document, parsed.error);
  const problems = [...forbidden, ...wrong, ...checkSize(pieces.station), ...findBrokenReferences(pieces)];
  if (problems.length > 0) return { problems: shorten(problems) };
  const station = withMeantFigures(pieces.station);
  return { station, remarks: shorten(remarksOn(station)) };
}
