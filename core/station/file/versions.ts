import { currentVersion, formatName } from '../schema/schema.ts';
import type { Problem } from './problem.ts';

type Json = Record<string, unknown>;

/** What the head of a file says, and what turns a file of version n into one of version n + 1. */
export interface FileFormat {
  readonly name: string;
  readonly version: number;
  readonly what: 'station' | 'unit kind';
  readonly migrations: Readonly<Record<number, (document: Json) => Json>>;
}

/** A station file; no migrations while version 1 is the only one. */
export const stationFormat: FileFormat = { name: formatName, version: currentVersion, what: 'station', migrations: {} };

/** The document brought to the present version, or the reason why it can't be. */
export function bringUpToDate(document: unknown, format: FileFormat): { document: Json } | { problem: Problem } {
  const { name, what } = format;
  if (typeof document !== 'object' || document === null || Array.isArray(document)) {
    return { problem: { place: 'file', message: `This is not a ${what}: a ${what} file holds one JSON object.` } };
  }
  let json = document as Json;
  if (json.format !== name) {
    return { problem: { place: 'format', message: `This is not a ${what} file: “format” has to be "${name}".` } };
  }
  const { version } = json;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { problem: { place: 'version', message: 'The version has to be a whole number from 1.' } };
  }
  if (version > format.version) {
    const message = `The file is of version ${version}; this program reads up to version ${format.version}. Open it with a newer one.`;
    return { problem: { place: 'version', message } };
  }
  for (let v = version; v < format.version; v++) json = format.migrations[v]?.(json) ?? json;
  return { document: json };
}
