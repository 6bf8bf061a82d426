import type { Problem } from './problem.ts';
import { currentVersion, formatName } from './schema.ts';

type Json = Record<string, unknown>;

/** What turns a document of version n into one of version n + 1; empty while version 1 is the only one. */
const migrations: Record<number, (document: Json) => Json> = {};

/** The document brought to the present version, or the reason why it can't be. */
export function bringUpToDate(document: unknown): { document: Json } | { problem: Problem } {
  if (typeof document !== 'object' || document === null || Array.isArray(document)) {
    return { problem: { place: 'file', message: 'This is not a station: a station file holds one JSON object.' } };
  }
  let json = document as Json;
  if (json.format !== formatName) {
    return { problem: { place: 'format', message: `This is not a station file: “format” has to be "${formatName}".` } };
  }
  const { version } = json;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { problem: { place: 'version', message: 'The version has to be a whole number from 1.' } };
  }
  if (version > currentVersion) {
    const message = `The file is of version ${version}; this program reads up to version ${currentVersion}. Open it with a newer one.`;
    return { problem: { place: 'version', message } };
  }
  for (let v = version; v < currentVersion; v++) json = migrations[v]?.(json) ?? json;
  return { document: json };
}
