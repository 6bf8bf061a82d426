import { writeStation } from '../station/file/write-station.ts';
import type { Station } from '../station/schema/schema.ts';

export interface Trouble {
  /** What was being done, to follow “while”: `surveying the station`. */
  readonly doing: string;
  /** What was thrown, or a sentence. */
  readonly error: unknown;
  /** The document it happened with, where there was one. */
  readonly station: Station | null;
  /** Where it ran: `Node 22.1.0 on linux`, a browser's own words. */
  readonly where: string;
}

/**
 * The text of a report on a fault of the program's own, for the user to read and to send if they like: what was being
 * done, what went wrong where, and the station itself, so that it can be seen again. Paths are cut to file names, as
 * they are nobody's business. Never throws, whatever was thrown.
 */
export function troubleReport({ doing, error, station, where }: Trouble): string {
  const parts = [
    'Stationwright: report on a fault of the program',
    `While ${doing}, on ${where}.`,
    withoutPaths(wordsOf(error)),
    station ? `The station:\n\n${textOf(station)}` : 'No station was open.',
  ];
  return `${parts.join('\n\n')}\n`;
}

function wordsOf(error: unknown): string {
  if (!(error instanceof Error)) return textOfThrown(error);
  const said = `${error.name}: ${error.message}`;
  // Some engines begin the stack with what was said, some don't.
  return error.stack?.includes(error.message) ? error.stack : `${said}\n${error.stack ?? ''}`.trimEnd();
}

function textOfThrown(thrown: unknown): string {
  try {
    return String(thrown);
  } catch {
    return 'something without words was thrown';
  }
}

const withoutPaths = (text: string): string =>
  text
    // An address with its port first, or what is left of it looks like a drive.
    .replace(/[a-z][\w+.-]*:\/\/[^\s()/\\]*[\\/](?:[^\s():]*[\\/])?/g, '')
    .replace(/(?:\b[A-Za-z]:[\\/]|\/)[^\s():]*[\\/]/g, '');

function textOf(station: Station): string {
  try {
    return writeStation(station);
  } catch (error) {
    return `It could not be written: ${String(error)}`;
  }
}
