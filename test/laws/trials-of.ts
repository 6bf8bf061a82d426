import type { Trial } from '../../core/keydown/key-down.ts';
import { tryHookup } from '../../core/keydown/try-hookup.ts';
import { hookupsOf } from '../../core/station/parts.ts';
import type { Hookup, Station } from '../../core/station/schema/schema.ts';

/** Every hook-up of a station tried, as in its survey, without the rules that judge it. */
export const trialsOf = (station: Station): { hookup: Hookup; trial: Trial }[] =>
  hookupsOf(station).map((hookup) => ({ hookup, trial: tryHookup(station, hookup) }));
