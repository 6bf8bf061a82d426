import type { Station } from '../../core/index.ts';
import type { ComputingFailure } from '../store/computed.ts';
import { TookTooLong } from './watched-thread.ts';

/** Why `doing` something with a station came to nothing, in a sentence and for a report. */
export function failureOf(doing: string, station: Station, error: unknown): ComputingFailure {
  const said = error instanceof Error ? error.message : String(error);
  const words =
    error instanceof TookTooLong
      ? `${said.replace(/^it/, 'It')}.`
      : `That is a fault of the program, not of your drawing: ${said.replace(/\.$/, '')}.`;
  return { words, doing, error, station };
}
